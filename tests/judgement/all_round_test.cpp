// The same corner looked at all round the vehicle: what is known on paper of a front lamp must come
// out of a rear, a side and a median one too, left and right.

#include "geometry/placement.h"
#include "judgement/check_study.h"
#include "judgement/made_rules.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

/// 60 x 40 lens at y = 700 behind a knife edge 40 mm ahead, outboard of it: 1131.371 mm2 at 45
/// outboard, 1250 mm2 up to 42.9852 (closed form). Drawn on the left, facing forward.
const Point place{0, 700, 0};
TriangleMesh lens() { return moved(plate(Point::Zero(), 60, 40), place); }
TriangleMesh edge() { return moved(wall(40, 50, 500, -300, 300), place); }

/// Turned about the vertical through the vehicle, and on the right mirrored.
Study corner(Angle turn, Side side)
{
    const auto put = [&](const TriangleMesh& mesh) {
        const TriangleMesh turned_mesh = moved(turned(moved(mesh, -place), turn), place);
        return side == Side::right
                   ? placed(turned_mesh, Placement::mirror(Point::Zero(), Direction::y()))
                   : turned_mesh;
    };
    Study study = lamp_behind(put(lens()), {put(edge())});
    study.lamps[LampId{0}].side = side;
    return study;
}

RuleRow area_at(double h, ReferenceAxis axis)
{
    RuleRow row = made_row("area", LeastArea{square_millimetres(1250)}, h, h, 0, 0);
    row.axis = axis;
    return row;
}

double least_in_view(const Study& study, double h, ReferenceAxis axis)
{
    const Findings f = check_study(asking(study, "area", {area_at(h, axis)}));
    return in_mm2(f.checks.front().deciding_verdict().least_visible);
}

} // namespace

TEST_CASE("front lamps, left and right, lose the same area outboard", "[judgement]")
{
    for (const Side side : {Side::left, Side::right}) {
        const Study study = corner(Angle(), side);
        CHECK(least_in_view(study, 45, ReferenceAxis::forward) == Approx(1131.371).margin(2e-3));
        CHECK(least_in_view(study, -45, ReferenceAxis::forward) ==
              Approx(2400 * 0.7071068).margin(2e-3));
    }
}

TEST_CASE("rear lamps, left and right: turned about, the edge stands inboard", "[judgement]")
{
    // Half a turn takes the edge from the outboard to the inboard side of the lens.
    for (const Side side : {Side::left, Side::right}) {
        const Study study = corner(degrees(180), side);
        CHECK(least_in_view(study, -45, ReferenceAxis::rearward) == Approx(1131.371).margin(2e-3));
        CHECK(least_in_view(study, 45, ReferenceAxis::rearward) ==
              Approx(2400 * 0.7071068).margin(2e-3));
    }
}

TEST_CASE("side lamps look outboard: +H is to the front on both sides", "[judgement]")
{
    // A quarter turn to the left takes the edge from outboard (+y) to the rear (-x).
    for (const Side side : {Side::left, Side::right}) {
        const Study study = corner(degrees(90), side);
        CHECK(least_in_view(study, -45, ReferenceAxis::outboard) == Approx(1131.371).margin(2e-3));
        CHECK(least_in_view(study, 45, ReferenceAxis::outboard) ==
              Approx(2400 * 0.7071068).margin(2e-3));
    }
}

TEST_CASE("a side indicator is counted from the rearward axis, outboard positive", "[judgement]")
{
    // Its lens faces outboard; the edge stands to the rear of it. 45 outboard of the rearward axis
    // is 45 to the rear of the lens's own normal.
    for (const Side side : {Side::left, Side::right}) {
        const Study study = corner(degrees(90), side);
        CHECK(least_in_view(study, 45, ReferenceAxis::rearward) == Approx(1131.371).margin(2e-3));
    }
}

TEST_CASE("a lamp on the median plane has its H to the left", "[judgement]")
{
    Study study = lamp_behind(plate(Point::Zero(), 60, 40), {wall(40, 50, 500, -300, 300)});
    study.lamps[LampId{0}].side = Side::median;
    CHECK(least_in_view(study, 45, ReferenceAxis::forward) == Approx(1131.371).margin(2e-3));
    CHECK(least_in_view(study, -45, ReferenceAxis::forward) ==
          Approx(2400 * 0.7071068).margin(2e-3));
}

TEST_CASE("a paired lamp whose far side is hidden by what exists once fails by its twin",
          "[judgement]")
{
    // The edge is drawn on the right only: the lamp drawn on the left sees nothing of it.
    Study study = corner(Angle(), Side::left);
    study.surfaces[SurfaceId{1}].mesh =
        placed(edge(), Placement::mirror(Point::Zero(), Direction::y()));
    study.surfaces[SurfaceId{0}].mirror = MirrorRule::yes;
    study.lamps[LampId{0}].paired = true;
    const Findings f = check_study(asking(study, "area", {area_at(45, ReferenceAxis::forward)}));
    CHECK(f.checks.front().outcome == Outcome::not_met);
    CHECK(f.looks[f.checks.front().deciding_verdict().look].twin);
    CHECK(f.looks[f.checks.front().deciding_verdict().look].side == Side::right);
}
