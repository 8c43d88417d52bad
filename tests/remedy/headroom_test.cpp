#include "remedy/headroom.h"

#include "judgement/made_rules.h"
#include "remedy/keep_clear_scenes.h"
#include "remedy/way_to_space.h"
#include "shapes/small_study.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;
using namespace glim::test;

namespace {

constexpr double half_width = 30, half_height = 15; ///< of the field, degrees

/// A lens so wide that its space ends below in a plane: see way_to_space_test.cpp. Vehicle and
/// level frame are one, but for the lamp's centre.
const double slope = tan(degrees(half_height)) / cos(degrees(half_width));
double bottom(double x) { return -50 - slope * x; }

Study below_lens(std::vector<TriangleMesh> bodies)
{
    Study study = shapes::asking(
        shapes::lamp_behind(shapes::plate(Point(0, 0, 0), 2000, 100, 2), std::move(bodies)), "row",
        {shapes::made_row("row", NoObstacle{}, -half_width, half_width, -half_height,
                          half_height)});
    study.keep_clear.box = Box{Point(-100, -700, -400), Point(500, 700, 400)};
    study.keep_clear.chord_error = millimetres(5);
    return study;
}

std::vector<Headroom> headroom_of(const Study& study, unsigned threads = 1)
{
    const Session session(study);
    const Workers workers{.threads = threads, .stop = {}, .progress = {}};
    return headroom_over(session, find_keep_clear(session, workers), workers);
}

/// A level sheet, or one that rises by `rise` mm a mm ahead, looking up; at x2 it lies `gap` below
/// the space.
TriangleMesh sheet(double gap, double rise = 0)
{
    const double x1 = 200, x2 = 300;
    const double z2 = bottom(x2) - gap, z1 = z2 - rise * (x2 - x1);
    return {{{x1, -40, z1}, {x2, -40, z2}, {x2, 40, z2}, {x1, 40, z1}}, {{0, 1, 2}, {0, 2, 3}}};
}

double grain(double at) { return 3 * in_mm(way_grain(millimetres(at))); }

} // namespace

// The space sinks ahead: the front edge is nearest, straight up.
TEST_CASE("a level sheet below a space has its gap at the edge", "[remedy]")
{
    for (const double gap : {0.3, 1.4, 12.0}) {
        INFO("gap " << gap);
        const std::vector<Headroom> found = headroom_of(below_lens({sheet(gap)}));
        REQUIRE(found.size() == 1);
        const Headroom& headroom = found.front();
        REQUIRE(headroom.least);
        CHECK(in_mm(*headroom.least) <= gap);
        CHECK(in_mm(*headroom.least) >= gap - grain(gap));
        CHECK(headroom.tightest.x() == Approx(300));
        CHECK(headroom.way.isApprox(Vector::UnitZ()));
        CHECK(headroom.space == 0);
        REQUIRE(headroom.by_space.size() == 1);
        CHECK(headroom.by_space.front().least == headroom.least);
        // It grows by `slope` mm a mm backward.
        for (std::size_t i = 0; i < headroom_levels.size(); ++i)
            CHECK(in_mm2(headroom.within[i]) ==
                  Approx(80 * std::clamp((in_mm(headroom_levels[i]) - gap) / slope, 0.0, 100.0))
                      .margin(80 * grain(20) / slope));
        for (std::size_t p = 0; p < headroom.figures.size(); ++p) {
            const double known = bottom(headroom.mesh.points[p].x()) - headroom.mesh.points[p].z();
            CHECK(in_mm(headroom.figures[p]) == Approx(known).margin(grain(known)));
        }
    }
}

TEST_CASE("a slanted sheet has its gap over the cosine of the slant", "[remedy]")
{
    for (const double rise : {-0.8, -0.2, 0.5}) {
        INFO("rise " << rise);
        const double gap = 2;
        const std::vector<Headroom> found = headroom_of(below_lens({sheet(gap, rise)}));
        const Vector up = Vector(-rise, 0, 1).normalized();
        const Vector normal = Vector(slope, 0, 1).normalized();
        // Where the sheet sinks faster than the space, its rear edge is nearest.
        const double x = rise < -slope ? 200 : 300;
        const double known = (gap + (rise + slope) * (300 - x)) * normal.z() / normal.dot(up);
        REQUIRE(found.front().least);
        CHECK(in_mm(*found.front().least) == Approx(known).margin(grain(known)));
        CHECK(found.front().tightest.x() == Approx(x));
    }
}

// At the box's edge the normal leans ahead: there it is 1.08 times the gap; beside it, on the top,
// it is the gap.
TEST_CASE("a box below a space has its gap", "[remedy]")
{
    const double gap = 1.4;
    const std::vector<Headroom> found =
        headroom_of(below_lens({shapes::box({200, -40, -250}, {300, 40, bottom(300) - gap})}));
    REQUIRE(found.front().least);
    CHECK(in_mm(*found.front().least) >= gap - grain(gap));
    CHECK(in_mm(*found.front().least) <= 1.08 * gap);
}

TEST_CASE("a sheet brought up by 1 mm loses 1 mm", "[remedy]")
{
    const Headroom before = headroom_of(below_lens({sheet(3)})).front();
    const Headroom after = headroom_of(below_lens({sheet(2)})).front();
    CHECK(in_mm(*before.least - *after.least) == Approx(1).margin(grain(3)));
}

TEST_CASE("headroom is below zero where something reaches in, by its depth", "[remedy]")
{
    const Study study = below_lens({sheet(1.5), sheet(-1.5)});
    const Session session(study);
    const KeepClear clear = find_keep_clear(session, {});
    const std::vector<Headroom> found = headroom_over(session, clear, {});
    REQUIRE(found.size() == 2);
    REQUIRE(clear.spaces.front().intrusions.size() == 1);
    const Intrusion& intrusion = clear.spaces.front().intrusions.front();
    CHECK(found[0].surface.surface == intrusion.surface.surface);
    CHECK(in_mm(*found[0].least) == Approx(-in_mm(intrusion.depth)).margin(0.01));
    CHECK(in_mm(*found[0].least) == Approx(-1.5).margin(0.01));
    CHECK(in_mm2(found[0].within[0]) == Approx(80 * 1.5 / slope).epsilon(0.05));
    CHECK(*found[1].least > Length());
    CHECK(in_mm2(found[1].within[0]) == 0);
}

TEST_CASE("a surface far from all spaces has no least", "[remedy]")
{
    const std::vector<Headroom> found = headroom_of(below_lens({sheet(150), sheet(5)}));
    REQUIRE(found.size() == 2);
    CHECK(found[0].least);
    CHECK_FALSE(found[1].least);
    CHECK(std::all_of(found[1].figures.begin(), found[1].figures.end(),
                      [](Length figure) { return figure == farthest_way_in; }));
}

// A sheet half a millimetre before the lens: rays skip it until it is 1 mm before it.
TEST_CASE("what rays skip at the lit face counts as free until it comes out", "[remedy]")
{
    const Study study = below_lens({shapes::wall(0.5, -20, 20, -20, 20)});
    const Session session(study);
    const KeepClear clear = find_keep_clear(session, {});
    CHECK(clear.is_kept());
    const Headroom headroom = headroom_over(session, clear, {}).front();
    REQUIRE(headroom.least);
    CHECK(in_mm(*headroom.least) == Approx(0.5).margin(0.02));
}

// The space of a lens of 0.6 mm seen from a fan of 0.3 degrees is a blade, 2.7 mm wide where it
// ends over the sheet's front edge: some places there, 4 mm apart, would miss it. Its lower edge is
// tan(20) lower for each mm from the lens's lower edge on.
TEST_CASE("the tightest place is found between the places looked at", "[remedy]")
{
    const double low = -0.3 - tan(degrees(20)) * 400 / cos(degrees(9.1));
    for (const double gap : {0.4, 12.0}) {
        Study study =
            shapes::asking(shapes::lamp_behind(shapes::plate(Point(0, 0, 0), 0.6, 0.6, 1),
                                               {{{{200, -310, low - gap},
                                                  {400, -310, low - gap},
                                                  {400, 310, low - gap},
                                                  {200, 310, low - gap}},
                                                 {{0, 1, 2}, {0, 2, 3}}}}),
                           "row", {shapes::made_row("row", NoObstacle{}, 9, 9.1, -20, 15)});
        study.keep_clear.box = Box{Point(-100, -400, -400), Point(500, 400, 400)};
        study.keep_clear.chord_error = millimetres(5);
        const Headroom headroom = headroom_of(study).front();
        REQUIRE(headroom.least);
        CHECK(in_mm(*headroom.least) <= gap + 0.1);
        CHECK(in_mm(*headroom.least) >= gap - grain(gap));
        CHECK(headroom.tightest.x() == Approx(400));
    }
}

TEST_CASE("headroom is the same on any number of threads", "[remedy]")
{
    const Study study = below_lens({sheet(3), shapes::ball(60, 24), sheet(-2, 0.1)});
    const std::vector<Headroom> one = headroom_of(study, 1), four = headroom_of(study, 4);
    REQUIRE(one.size() == four.size());
    for (std::size_t i = 0; i < one.size(); ++i) {
        CHECK(one[i].least == four[i].least);
        CHECK(one[i].tightest == four[i].tightest);
        CHECK(one[i].figures == four[i].figures);
        CHECK(one[i].mesh.points == four[i].mesh.points);
    }
}
