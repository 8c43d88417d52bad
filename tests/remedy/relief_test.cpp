#include "remedy/relief.h"

#include "remedy/relief_scenes.h"
#include "shapes/simple_shapes.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

namespace {

constexpr std::array<double, 4> ahead = {0, 0, 0, 0};

double least_mm(const Study& study)
{
    const Relief relief = least_relief(study, degrees(5), {});
    REQUIRE(relief.least);
    return in_mm(relief.least->depth);
}

} // namespace

// Seen from straight ahead the wedge hides all of the lamp below its ridge at z = 10. For 2500 mm2
// of 100 mm width the lower edge of what is seen has to come down from 10 to 0.
TEST_CASE("a wedge has to sink as far as the line of sight lies below its ridge", "[remedy]")
{
    const Relief relief = relief_of(lamp_behind_hump(wedge(10), 2500, ahead));
    REQUIRE(relief.least);
    CHECK(in_mm(relief.least->depth) == Approx(10).margin(0.01));
    CHECK(relief.least->surface == "hump");
    CHECK(relief.least->place.x() == Approx(200).margin(0.01));
    CHECK(relief.least->place.z() == Approx(10).margin(0.01));
    CHECK(relief.least->attained());
    REQUIRE(relief.found());
    CHECK(in_mm(relief.shape.deepest) <= 1.02 * in_mm(relief.least->depth));
    CHECK(in_degrees(relief.shape.steepest) <= 30.01);
    REQUIRE(relief.after);
    CHECK(relief.after->checks[0].outcome == Outcome::met);
    CHECK(relief.directions_gained == 1);
    CHECK(relief.shape.deepest_surface == "hump");
    CHECK(relief.shape.deepest_after.z() == Approx(0).margin(0.2)); // 2 % of the depth
}

// Looking 10 degrees down, the ray through the lamp's middle passes the ridge at 200 tan 10 below
// z = 0, and the view shrinks the width by nothing, the height by cos 10.
TEST_CASE("a line of sight that falls asks for what it falls on top", "[remedy]")
{
    const double t = tan(degrees(10));
    const double c = cos(degrees(10));
    const Study study = lamp_behind_hump(wedge(-30), 2500 * c, {0, 0, -10, -10});
    CHECK(least_mm(study) == Approx(-30 + 200 * t).margin(0.01));
}

// A wall of one plane that leans towards the lamp: only its upper edge counts.
TEST_CASE("a flat wall before a lamp has to sink by what it overlaps", "[remedy]")
{
    const TriangleMesh wall = strip({{150, -100}, {180, 5}}, -200, 200);
    CHECK(least_mm(lamp_behind_hump(wall, 2500, ahead)) == Approx(5).margin(0.01));
    CHECK(least_mm(lamp_behind_hump(wall, 4000, ahead)) == Approx(20).margin(0.01));
}

// The top of the facetted cylinder, seen level, is its topmost edge; seen from above under V its
// outline runs where the radius is perpendicular to the view, R / cos V - R above that over the
// axis. Facets lie within R (1 - cos(pi / 128)) = 0.03 mm of the circle.
TEST_CASE("a round nose has to sink as its outline says", "[remedy]")
{
    const Study level = lamp_behind_hump(round_nose(10, 64), 2500, ahead);
    CHECK(least_mm(level) == Approx(10).margin(0.01));
    const double t = tan(degrees(10));
    const double c = cos(degrees(10));
    const Study from_below = lamp_behind_hump(round_nose(-40, 64), 2500 * c, {0, 0, -10, -10});
    CHECK(least_mm(from_below) == Approx(-40 - 100 + 100 / c + 300 * t).margin(0.06));
}

// Half of the lamp is asked for and all of it is hidden: its upper half is freed by 25 mm, its
// lower half would take 50.
TEST_CASE("the upper half of a lamp is freed where that is shallower", "[remedy]")
{
    const Relief relief = relief_of(lamp_behind_hump(wedge(25), 2500, ahead));
    REQUIRE(relief.least);
    CHECK(in_mm(relief.least->depth) == Approx(25).margin(0.01));
    REQUIRE(relief.found());
    CHECK(in_mm(relief.shape.deepest) <= 1.02 * 25);
}

TEST_CASE("what is met already needs no relief", "[remedy]")
{
    const Relief relief = relief_of(lamp_behind_hump(wedge(10), 1400, ahead));
    CHECK(relief.sights.empty());
    CHECK(relief.found());
    CHECK_FALSE(relief.least);
    CHECK(relief.shape.surfaces.empty());
}

TEST_CASE("a fixed part that hides too much is named, with what is reachable", "[remedy]")
{
    Study study = lamp_behind_hump(wedge(10), 2500, ahead);
    add_fixed(study, "beam", shapes::wall(250, -200, 200, -200, 5));
    const Relief relief = relief_of(study);
    CHECK_FALSE(relief.found());
    REQUIRE(relief.limits.size() == 1);
    CHECK(relief.limits[0].barrier == ReliefBarrier::fixed_part);
    CHECK(relief.limits[0].part == "beam");
    CHECK(in_mm2(relief.limits[0].reachable) == Approx(2000).margin(2)); // its rim is sampled
    CHECK_FALSE(relief.least);
}

TEST_CASE("a relief that may not be deep enough goes as deep as it may", "[remedy]")
{
    Study study = lamp_behind_hump(wedge(10), 2500, ahead);
    study.relief.max_depth = millimetres(6);
    const Relief relief = relief_of(study);
    CHECK_FALSE(relief.found());
    REQUIRE(relief.limits.size() == 1);
    CHECK(relief.limits[0].barrier == ReliefBarrier::max_depth);
    CHECK(in_mm2(relief.limits[0].reachable) == Approx(2100).margin(1));
    REQUIRE(relief.after);
    CHECK(in_mm2(relief.after->checks[0].rows[0].lamps[0].least_visible) == Approx(2100).margin(5));
    CHECK(in_mm(relief.shape.deepest) == Approx(6).margin(0.01));
}

TEST_CASE("what is to be spared is added to what has to sink", "[remedy]")
{
    Study study = lamp_behind_hump(wedge(10), 2500, ahead);
    study.relief.spare = millimetres(2);
    CHECK(least_mm(study) == Approx(12).margin(0.01));
    study.relief.spare = millimetres(0);
    study.relief.spare_area = square_millimetres(300);
    CHECK(least_mm(study) == Approx(13).margin(0.01));
}

TEST_CASE("a looser threshold never needs more depth", "[remedy]")
{
    double before = 1000;
    for (const double needed : {4500.0, 3500.0, 2500.0, 1600.0}) {
        const double depth = least_mm(lamp_behind_hump(wedge(10), needed, {-20, 20, -5, 5}));
        CHECK(depth <= before);
        before = depth;
    }
}

TEST_CASE("a scene of twice the size needs twice the depth", "[remedy]")
{
    Study study = lamp_behind_hump(wedge(10, -150, 150), 2500, {-10, 10, -5, 5});
    const double depth = least_mm(study);
    for (Surface& surface : study.surfaces)
        for (Point& p : surface.mesh.points)
            p *= 2;
    std::get<LeastArea>(study.tables[0].rows[0].criterion).area = square_millimetres(10000);
    CHECK(least_mm(study) == Approx(2 * depth).epsilon(1e-3));
}

TEST_CASE("a mirrored scene has a mirrored relief", "[remedy]")
{
    // Slanted, so that the sides differ: the ridge runs up to the left.
    TriangleMesh slanted = wedge(10, -150, 150);
    for (Point& p : slanted.points)
        p.z() += p.x() == 200 ? 0.05 * p.y() : 0;
    Study study = lamp_behind_hump(slanted, 2500, {0, 10, 0, 0});
    const Relief left = relief_of(study);
    Study mirrored = study;
    for (Surface& surface : mirrored.surfaces) {
        for (Point& p : surface.mesh.points)
            p.y() = -p.y();
        surface.mesh = turned_over(surface.mesh);
    }
    mirrored.lamps[LampId{0}].side = Side::right;
    const Relief right = relief_of(mirrored);
    REQUIRE(left.found());
    REQUIRE(right.found());
    CHECK(in_mm(right.least->depth) == Approx(in_mm(left.least->depth)).margin(1e-3));
    CHECK(right.least->place.y() == Approx(-left.least->place.y()).margin(0.5));
    CHECK(in_mm(right.shape.deepest) == Approx(in_mm(left.shape.deepest)).epsilon(0.01));
    // Facets are not mirrored in how they are halved.
    CHECK(in_mm3(right.shape.volume) == Approx(in_mm3(left.shape.volume)).epsilon(0.1));
}

// To the left the ridge stands over the lamp's right half, to the right over its left half: what
// each direction would free for itself is not what serves both.
TEST_CASE("two directions that compete are both served", "[remedy]")
{
    Study study = lamp_behind_hump(wedge(25), 2500, {-25, 25, 0, 0});
    study.tables[0].rows[0].field = {{{degrees(-25), degrees(-25), degrees(0), degrees(0)},
                                      {degrees(25), degrees(25), degrees(0), degrees(0)}}};
    const Relief relief = relief_of(study);
    REQUIRE(relief.sights.size() == 2);
    REQUIRE(relief.found());
    CHECK(relief.directions_gained == 2);
    CHECK(relief.after->checks[0].outcome == Outcome::met);
    CHECK(in_mm(relief.shape.deepest) <= 1.02 * in_mm(relief.least->for_sure));
}

TEST_CASE("a fixed edge beside the line of sight keeps a relief from being deep enough", "[remedy]")
{
    // The ridge is the rim of a wall that leans towards the lamp.
    const TriangleMesh wall = strip({{150, -100}, {180, 5}}, -200, 200);
    Study study = lamp_behind_hump(wall, 2500, ahead);
    study.surfaces[SurfaceId{1}].reshape->all_edges_fixed = true;
    const Relief relief = relief_of(study);
    REQUIRE(relief.least);
    CHECK(in_mm(relief.least->depth) == Approx(5).margin(0.01)); // slopes free
    CHECK_FALSE(relief.found());
    REQUIRE(relief.limits.size() == 1);
    CHECK(relief.limits[0].barrier == ReliefBarrier::edges);
    CHECK(in_mm2(relief.limits[0].reachable) < 2100);
    CHECK(in_mm(relief.shape.deepest_edge) < 1e-6);
}

// Only one end of the ridge is held: what it keeps from being freed there is freed elsewhere,
// deeper.
TEST_CASE("an untouched box is gone around where that is possible", "[remedy]")
{
    Study study = lamp_behind_hump(wedge(10), 2500, ahead);
    study.relief.untouched = {Box{{150, 30, -50}, {250, 200, 50}}};
    const Relief relief = relief_of(study);
    REQUIRE(relief.found());
    CHECK(in_mm(relief.least->depth) == Approx(10).margin(0.01));
    CHECK(in_mm(relief.shape.deepest) > 11);
    CHECK(in_mm(relief.slope_cost.depth) > 1);
    for (const ReshapedSurface& surface : relief.shape.surfaces)
        for (std::size_t p = 0; p < surface.depths.size(); ++p)
            if (study.relief.untouched[0].holds(surface.mesh.points[p]))
                CHECK(in_mm(surface.depths[p]) < 1e-6);
}

TEST_CASE("no surface to reshape is refused", "[remedy]")
{
    Study study = lamp_behind_hump(wedge(10), 2500, ahead);
    study.surfaces[SurfaceId{1}].reshape.reset();
    CHECK_THROWS_AS(relief_of(study), InputError);
}

TEST_CASE("one thread or several make the same relief", "[remedy]")
{
    const Study study = lamp_behind_hump(wedge(10), 2500, {-5, 5, 0, 0});
    const Relief one = relief_of(study);
    const Relief several =
        find_relief(study, degrees(5), Workers{.threads = 3, .stop = {}, .progress = {}});
    REQUIRE(one.shape.surfaces.size() == several.shape.surfaces.size());
    CHECK(one.shape.surfaces[0].mesh.points == several.shape.surfaces[0].mesh.points);
    CHECK(one.least->depth == several.least->depth);
}
