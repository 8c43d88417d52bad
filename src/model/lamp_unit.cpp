#include "model/lamp_unit.h"

#include <algorithm>

namespace glim {

namespace {

bool has(const std::vector<SurfaceId>& list, SurfaceId id)
{
    return std::find(list.begin(), list.end(), id) != list.end();
}

void add(std::vector<SurfaceId>& list, SurfaceId id)
{
    if (!has(list, id))
        list.push_back(id);
}

/// What is lit of a lens that moves, moves.
void add_lit_parts(const Study& study, std::vector<SurfaceId>& surfaces)
{
    for (const SurfaceId s : study.surfaces.ids())
        if (const auto whole = study.surfaces[s].lit_part_of; whole && has(surfaces, *whole))
            add(surfaces, s);
    std::sort(surfaces.begin(), surfaces.end());
}

} // namespace

std::vector<SurfaceId> unit_of(const Study& study, LampId lamp)
{
    std::vector<SurfaceId> surfaces;
    for (const SurfaceId s : study.lamps[lamp].emits) {
        add(surfaces, s);
        if (const auto whole = study.surfaces[s].lit_part_of)
            add(surfaces, *whole);
    }
    for (const SurfaceId s : study.surfaces.ids())
        if (study.surfaces[s].moves_with == lamp)
            add(surfaces, s);
    add_lit_parts(study, surfaces);
    return surfaces;
}

MovingBodies moving_bodies(const Study& study, const std::vector<SurfaceId>& surfaces,
                           const std::vector<LampId>& lamps)
{
    MovingBodies moving;
    for (const SurfaceId s : surfaces)
        add(moving.surfaces, s);
    for (const LampId lamp : lamps)
        for (const SurfaceId s : unit_of(study, lamp))
            add(moving.surfaces, s);
    add_lit_parts(study, moving.surfaces);
    for (const LampId lamp : study.lamps.ids()) {
        const std::vector<SurfaceId>& emits = study.lamps[lamp].emits;
        if (std::any_of(emits.begin(), emits.end(),
                        [&](SurfaceId s) { return has(moving.surfaces, s); }))
            moving.lamps.push_back(lamp);
    }
    return moving;
}

} // namespace glim
