#include "remedy/place_room.h"

#include "judgement/conditions.h"

#include <algorithm>

namespace glim {

namespace {

/// Whether all that can be asked of a sketch holds: conditions of the vehicle, and categories.
bool may_apply(const RuleRow& row, const LampSketch& sketch)
{
    const Lamp& lamp = sketch.study.lamps[LampId{0}];
    LampLook look;
    look.axis_height = sketch.above;
    return speaks_of(row, lamp.function) && all_hold(row.when, sketch.study, lamp, look);
}

PlaceRoom room_of(const RuleRow& row, PlaceRoom::Of of, Length is)
{
    return {row.id, row.title, row.citation, of, {}, {}, is};
}

PlaceRoom height_room(const RuleRow& row, const HeightLimits& limits, const LampSketch& sketch,
                      const Box& lens)
{
    PlaceRoom room = room_of(row, PlaceRoom::Of::height, sketch.above);
    const bool of_edges = limits.of == HeightOf::apparent_surface;
    const Length below = of_edges ? sketch.above - millimetres(lens.least.z()) : Length();
    const Length over = of_edges ? millimetres(lens.most.z()) - sketch.above : Length();
    if (limits.at_least)
        room.least = *limits.at_least + below;
    if (limits.at_most)
        room.most = *limits.at_most - over;
    return room;
}

} // namespace

std::vector<PlaceRoom> place_rooms(const LampSketch& sketch, const Box& lens)
{
    std::vector<PlaceRoom> rooms;
    const Length outward = millimetres(lens.most.y()) - sketch.lateral;
    const Length inward = sketch.lateral - millimetres(lens.least.y());
    const std::optional<OuterEdge> edge = sketch.study.vehicle.outer_edge();
    for (const RuleRow& row : sketch.study.tables.front().rows) {
        if (asks_directions(row.criterion) || !may_apply(row, sketch))
            continue;
        if (const auto* limits = std::get_if<HeightLimits>(&row.criterion))
            rooms.push_back(height_room(row, *limits, sketch, lens));
        PlaceRoom room = room_of(row, PlaceRoom::Of::lateral, sketch.lateral);
        if (const auto* outer = std::get_if<ToOuterEdge>(&row.criterion); outer && edge) {
            room.least = edge->from_median - outer->at_most - outward;
            room.most = edge->from_median - outward;
            rooms.push_back(std::move(room));
        } else if (const auto* inner = std::get_if<BetweenInnerEdges>(&row.criterion)) {
            room.least = inner->at_least / 2 + inward;
            rooms.push_back(std::move(room));
        }
    }
    return rooms;
}

} // namespace glim
