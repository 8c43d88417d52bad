#include "remedy/sight_lines.h"

#include "judgement/conditions.h"
#include "judgement/plan.h"
#include "machine/stop.h"
#include "remedy/part_choice.h"
#include "remedy/sight_curves.h"

#include <algorithm>

namespace glim {

namespace {

/// Sideways the drawing ends here, from the median plane, as a multiple of the vehicle's width.
constexpr double widest_share = 1.5;
constexpr double highest_mm = 5000;
constexpr Angle coarse_step = degrees(5);

ConvexPolygon plan_of_drawing(const LampSketch& sketch)
{
    const double far = in_mm(sketch.ahead);
    const double aside = widest_share * in_mm(*sketch.study.vehicle.overall_width);
    const double y = in_mm(sketch.lateral);
    return {{-far, -aside - y}, {far, -aside - y}, {far, aside - y}, {-far, aside - y}};
}

/// Where the lens shows least, and how large its face would have to be for the rule.
void measure_lens(const TriangleMesh& lit, SightRow& row)
{
    const LeastSight least = least_sight(lit, row.field);
    row.worst = least.from;
    row.least_shown = least.shown;
    // Less than this is the rounding of a face seen edge-on.
    constexpr double least_share = 1e-9;
    if (row.needed > Area() && in_mm2(least.shown) > least_share * in_mm2(area_of(lit)))
        row.least_face = area_of(lit) * (row.needed / least.shown);
}

/// Where the lens is large enough for one way of a rule, the others need not be kept.
void spare_other_ways(SightLines& lines, const AskedCheck& check)
{
    const RowKept kept = [&](const std::string& id) -> std::optional<bool> {
        for (const SightRow& row : lines.rows)
            if (row.row.id == id)
                return !row.lens_too_small();
        return std::nullopt;
    };
    const std::set<std::string> count = rows_that_count(*check.table, check.check->rule, kept);
    for (SightRow& row : lines.rows)
        row.spared = row.lens_too_small() && count.count(row.row.id) == 0;
    lines.choices = ways_of_rule(*check.table, check.check->rule, kept);
}

bool is_flat(const Field& field)
{
    return std::any_of(
        field.rectangles.begin(), field.rectangles.end(),
        [](const FieldRectangle& r) { return r.h_least == r.h_most || r.v_least == r.v_most; });
}

/// Rows in single directions are told of, but leave nothing to draw.
void refuse_without_curves(const SightLines& lines, const LampSketch& sketch)
{
    if (lines.rows.empty())
        refuse({sketch.study.file, 0, 0, {}},
               "no row of the rule asks for anything to be seen of this lamp",
               "ask a rule of geometric visibility; `cornerglim tables` lists them");
    if (lines.curves.empty())
        refuse({sketch.study.file, 0, 0, {}},
               "the field of row `" + lines.rows.front().row.id +
                   "` has no width or no height: it is a line and leaves no limits to draw",
               "ask a rule whose field is a range of directions");
}

bool is_unknown(Measured quantity, const Study& study)
{
    return (quantity == Measured::vehicle_category && study.vehicle.category.empty()) ||
           (quantity == Measured::lamp_category && study.lamps[LampId{0}].category.empty());
}

/// On what that the sketch does not say it hangs whether the row applies; nothing if on nothing.
std::optional<Measured> unknown_for(const RuleRow& row, const AskedCheck& check, const Study& study)
{
    if (!speaks_of(row, study.lamps[LampId{0}].function))
        return std::nullopt;
    std::vector<Condition> conditions = row.when;
    for (const Rule* rule : rules_under(*check.table, check.check->rule))
        for (const RuleRow* below : rows_under(*check.table, rule->id))
            if (below->id == row.id)
                conditions.insert(conditions.end(), rule->when.begin(), rule->when.end());
    for (const Condition& condition : conditions)
        if (is_unknown(condition.quantity, study))
            return condition.quantity;
    return std::nullopt;
}

} // namespace

SightLines find_sight_lines(const LampSketch& sketch, const Workers& workers)
{
    const Session session(sketch.study);
    const std::vector<std::size_t> checks{0};
    const Plan plan = plan_of(session.study(), session.scene(), checks, coarse_step);
    SightLines lines;
    lines.chord_error = session.study().keep_clear.chord_error;
    for (const AskedRow& row : plan.checks.front().rows) {
        const Asked& asked = row.lamps.front();
        const std::optional<PartNeeded> needed = part_needed(row.row->criterion);
        if (!needed || asked.not_applicable || asked.category_open || row.proof_from) {
            const auto unknown = needed && asked.not_applicable
                                     ? unknown_for(*row.row, plan.checks.front(), sketch.study)
                                     : std::nullopt;
            if (unknown)
                lines.left_open.push_back({row.row->id, *unknown});
            else
                lines.without_space.push_back(row.row->id);
            continue;
        }
        if (workers.stop.stop_requested())
            throw Stopped();
        if (workers.progress)
            workers.progress(lines.rows.size(), plan.checks.front().rows.size());
        const LampLook& look = plan.looks[asked.look];
        const LevelFrame frame(look.centre, look.frame);
        const TriangleMesh vehicle_lit = session.scene().lit_surface_of(asked.lamp);
        const TriangleMesh lit = frame.into(vehicle_lit);
        SightRow found;
        found.row = *row.row;
        found.field = asked.field;
        found.relaxed = asked.relaxation.has_value();
        found.needed = needed->area;
        measure_lens(lit, found);
        const SpaceReach reach{plan_of_drawing(sketch),
                               {millimetres(-highest_mm), millimetres(highest_mm)}};
        const PartChoice choice = chosen_part(lit, {found.field, *needed},
                                              session.study().keep_clear, reach, workers.stop);
        if (!choice.whole)
            found.kept = choice.kept.edge;
        lines.lens = box_of(vehicle_lit);
        lines.face = area_of(lit);
        lines.facets = lit.facets.size();
        if (is_flat(found.field)) {
            lines.rows.push_back(std::move(found));
            continue;
        }
        const KeepClearSet set(sheaves_of(lit, choice.kept), reach.levels);
        found.nose = nose_reaches(set, sketch, lines.lens);
        for (LimitCurve& curve : limit_curves(set, sketch, workers.stop)) {
            curve.row = lines.rows.size();
            lines.curves.push_back(std::move(curve));
        }
        lines.rows.push_back(std::move(found));
    }
    refuse_without_curves(lines, sketch);
    spare_other_ways(lines, plan.checks.front());
    lines.places = place_rooms(sketch, lines.lens);
    return lines;
}

bool SightLines::kept() const
{
    return std::all_of(rows.begin(), rows.end(),
                       [](const SightRow& row) { return !row.lens_too_small() || row.spared; }) &&
           std::all_of(places.begin(), places.end(),
                       [](const PlaceRoom& room) { return room.keeps(); });
}

} // namespace glim
