#include "remedy/sight_lines.h"

#include "judgement/plan.h"
#include "machine/stop.h"
#include "remedy/part_choice.h"
#include "remedy/sight_curves.h"

#include <algorithm>
#include <limits>
#include <numeric>

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
    double least = std::numeric_limits<double>::infinity();
    for (const Bearing& b : grid_of(row.field, coarse_step).nodes) {
        const Vector toward = direction_of(b, LampFrame{}).vector();
        double shown = 0;
        for (std::size_t f = 0; f < lit.facets.size(); ++f)
            shown += std::max(0.0, area_vector(lit, f).dot(toward));
        if (shown < least) {
            least = shown;
            row.worst = b;
        }
    }
    row.least_shown = square_millimetres(least);
    // Less than this is the rounding of a face seen edge-on.
    constexpr double least_share = 1e-9;
    if (row.needed > Area() && least > least_share * in_mm2(area_of(lit)))
        row.least_face = area_of(lit) * (in_mm2(row.needed) / least);
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
            lines.without_space.push_back(row.row->id);
            continue;
        }
        if (workers.stop.stop_requested())
            throw Stopped();
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
        const PartChoice choice =
            chosen_part(lit, {found.field, *needed}, session.study().keep_clear, reach);
        if (!choice.whole)
            found.kept = choice.kept.edge;
        lines.lens = box_of(vehicle_lit);
        lines.face = area_of(lit);
        if (is_flat(found.field)) {
            lines.rows.push_back(std::move(found));
            continue;
        }
        const KeepClearSet set(sheaves_of(lit, choice.kept), reach.levels);
        found.nose = nose_reaches(set, sketch, lines.lens);
        for (LimitCurve& curve : limit_curves(set, sketch)) {
            curve.row = lines.rows.size();
            lines.curves.push_back(std::move(curve));
        }
        lines.rows.push_back(std::move(found));
    }
    refuse_without_curves(lines, sketch);
    lines.places = place_rooms(sketch, lines.lens);
    return lines;
}

} // namespace glim
