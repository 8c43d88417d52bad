#include "remedy/added_lamp_needs.h"

#include "geometry/direction_grid.h"
#include "judgement/conditions.h"
#include "judgement/lamp_frame.h"
#include "judgement/plan.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// The ground in which a row counts, as a check of it takes it.
const Ground& ground_of(const Study& study, const Check& check, const RuleRow& row)
{
    const GroundState* state = study.ground_in(check.state.empty() ? row.state : check.state);
    return state ? state->ground : study.grounds.front().ground;
}

Area area_asked(const RuleRow& row)
{
    const auto* least = std::get_if<LeastArea>(&row.criterion);
    return least ? least->area : Area();
}

/// What the lamp shows less than is asked there, by the most careful reading: its own errors are
/// there too where another lamp's area is added.
Area missing_area(const RuleRow& row, const LampLook& look, std::size_t at)
{
    return std::max(area_asked(row) - (look.low(at) - look.mesh_error[at]), Area());
}

bool is_node(const std::vector<Bearing>& sorted, const Bearing& b)
{
    return std::binary_search(sorted.begin(), sorted.end(), b, by_v_then_h);
}

std::vector<Bearing> nodes_of(const Field& field, Angle step)
{
    std::vector<Bearing> nodes = grid_of(field, step).nodes;
    std::sort(nodes.begin(), nodes.end(), by_v_then_h);
    return nodes;
}

LampFrame across_median(const LampFrame& frame, const Vehicle& vehicle)
{
    const Placement mirror = vehicle.across_median();
    return {mirror(frame.forward), mirror(frame.outboard), mirror(frame.up)};
}

/// Corners of the lit faces of lamps with these functions, on the side of `lamp`.
std::vector<Point> corners_of_lamps(const Study& study, const std::vector<LampFunction>& functions,
                                    Side side)
{
    std::vector<Point> corners;
    for (const Lamp& lamp : study.lamps)
        if (lamp.side == side &&
            std::find(functions.begin(), functions.end(), lamp.function) != functions.end())
            for (const SurfaceId s : lamp.emits) {
                const auto& points = study.surfaces[s].mesh.points;
                corners.insert(corners.end(), points.begin(), points.end());
            }
    return corners;
}

/// Whether one point of a lamp, its centre, leaves room for the rest to keep the limit. Parts of a
/// lamp reach out from its centre, so a limit that the centre breaks is broken.
struct RoomFor {
    const Study& study;
    const Ground& ground;
    const Lamp& lamp;
    const std::vector<Point>& others;
    const Point& centre;

    bool operator()(const HeightLimits& limits) const
    {
        const Length height = ground.height_of(centre);
        const auto most = limits.unless_unavoidable ? limits.unless_unavoidable : limits.at_most;
        return (!limits.at_least || height >= *limits.at_least) && (!most || height <= *most);
    }
    bool operator()(const ToOuterEdge& limit) const
    {
        const auto edge = study.vehicle.outer_edge();
        return !edge || edge->from_median - out() <= limit.at_most;
    }
    bool operator()(const BetweenInnerEdges& limit) const
    {
        return !lamp.paired || 2 * out() >= limit.at_least;
    }
    bool operator()(const GapToLamp& gap) const
    {
        const Vector& forward = study.vehicle.forward.vector();
        return gap.steps.empty() || std::none_of(others.begin(), others.end(), [&](const Point& p) {
                   const Vector apart = p - centre;
                   const double across = (apart - apart.dot(forward) * forward).norm();
                   return millimetres(across) < gap.steps.back().at_least;
               });
    }
    template <class Other>
    bool operator()(const Other&) const
    {
        return true;
    }

private:
    Length out() const
    {
        const Length left = study.vehicle.lateral(centre);
        return lamp.side == Side::right ? -left : left;
    }
};

} // namespace

AddedLampNeeds::AddedLampNeeds(const From& from, Angle step) : study_(from.study), lamp_(from.lamp)
{
    for (std::size_t i = 0; i < from.checks.size(); ++i) {
        const Check& check = study_.checks[from.checks[i]];
        rows_.push_back(rows_to_answer(study_, check, lamp_));
        for (const RuleRow* row : rows_.back().in_directions)
            add_row(check, *row, step);
        for (const RuleRow* row : rows_.back().of_place)
            add_place_row(check, *row);
        add_missing(from, from.findings.checks[i], step);
    }
}

std::uint32_t AddedLampNeeds::look_at(const LampFrame& frame, const LampFrame& twin,
                                      const Bearing& bearing)
{
    const NeedLook look{direction_of(bearing, frame), direction_of(bearing, twin), bearing};
    const Vector& a = look.toward.vector();
    const Vector& b = look.twin_toward.vector();
    const auto [at, is_new] =
        known_looks_.try_emplace({a.x(), a.y(), a.z(), b.x(), b.y(), b.z()}, looks_.size());
    if (is_new)
        looks_.push_back(look);
    return at->second;
}

void AddedLampNeeds::add_row(const Check& check, const RuleRow& row, Angle step)
{
    const Ground& ground = ground_of(study_, check, row);
    const Direction axis = lamp_.axis.value_or(axis_of(study_.vehicle, lamp_.side, row.axis));
    const LampFrame frame = lamp_frame(study_.vehicle, ground, lamp_.side, axis, row.axis);
    Field asked{&row, frame, across_median(frame, study_.vehicle), &ground, {}};
    const auto add = [&](const glim::Field& field) {
        std::vector<AreaNeed> needs;
        for (const Bearing& b : nodes_of(field, step))
            needs.push_back({look_at(asked.frame, asked.twin_frame, b), area_asked(row)});
        asked.needs.push_back(std::move(needs));
    };
    add(row.field);
    for (const Relaxation& relaxation : row.relaxations)
        add(relaxation.field);
    fields_.push_back(std::move(asked));
}

void AddedLampNeeds::add_place_row(const Check& check, const RuleRow& row)
{
    const auto* gap = std::get_if<GapToLamp>(&row.criterion);
    place_rows_.push_back(
        {&row, &ground_of(study_, check, row),
         gap ? corners_of_lamps(study_, gap->to, lamp_.side) : std::vector<Point>()});
}

/// Of the lamp helped, as drawn and as its twin; what is missing on either side is missing.
void AddedLampNeeds::add_missing(const From& from, const CheckFindings& check, Angle step)
{
    for (const RowFindings& row : check.rows)
        for (const LampVerdict& verdict : row.lamps) {
            const LampLook& look = from.findings.looks[verdict.look];
            if (look.standings.front().lamp != from.helped || verdict.directions.empty() ||
                row.not_chosen || !row.proof_from.empty() || asks_light(row.row.criterion))
                continue;
            const std::vector<Bearing> nodes = nodes_of(verdict.field, step);
            const LampFrame twin = across_median(look.frame, study_.vehicle);
            for (std::size_t i = 0; i < verdict.directions.size(); ++i) {
                const DirectionVerdict& d = verdict.directions[i];
                const Bearing& bearing = look.toward[d.at];
                if (d.outcome == Outcome::met || (i != verdict.worst && !is_node(nodes, bearing)))
                    continue;
                missing_.push_back({look.twin ? look_at(twin, look.frame, bearing)
                                              : look_at(look.frame, twin, bearing),
                                    missing_area(row.row, look, d.at)});
            }
        }
}

std::optional<std::size_t> AddedLampNeeds::choice(const Field& field, const Point& centre) const
{
    LampLook look;
    look.axis_height = field.ground->height_of(centre);
    if (!all_hold(field.row->when, study_, lamp_, look))
        return std::nullopt;
    const auto& relaxations = field.row->relaxations;
    for (std::size_t i = 0; i < relaxations.size(); ++i)
        if (all_hold(relaxations[i].when, study_, lamp_, look))
            return i + 1;
    return 0;
}

std::vector<std::span<const AreaNeed>> AddedLampNeeds::whole(const Point& centre) const
{
    std::vector<std::span<const AreaNeed>> needs;
    for (const Field& field : fields_)
        if (const auto chosen = choice(field, centre))
            needs.emplace_back(field.needs[*chosen]);
    return needs;
}

bool AddedLampNeeds::may_stand(const Point& centre) const
{
    return std::all_of(place_rows_.begin(), place_rows_.end(), [&](const PlaceRow& place) {
        return std::visit(RoomFor{study_, *place.ground, lamp_, place.lamps, centre},
                          place.row->criterion);
    });
}

} // namespace glim
