#include "drawing/level_set.h"

#include "drawing/map_frame.h"
#include "specimens/made_fields.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace glim;
using namespace glim::test;

namespace {

const double pi = std::acos(-1.0);

const Field square{{rectangle(-15, 15, -15, 15)}};
const Field notched{{rectangle(-45, 30, 0, 15), rectangle(-20, 30, -15, 0)}};

LevelSet level_set_of(const FigureOnGrid& f, double level)
{
    return level_set(f.grid(), f.figures(), level);
}

} // namespace

TEST_CASE("a cone is cut in a circle, and what is below it is a disc", "[drawing]")
{
    const FigureOnGrid cone(square, 0.5, [](double h, double v) { return std::hypot(h, v); });
    const LevelSet set = level_set_of(cone, 10);
    REQUIRE(set.border.size() == 1);
    CHECK(set.border[0].closed);
    for (const Bearing& b : set.border[0].points)
        CHECK(std::hypot(in_degrees(b.h), in_degrees(b.v)) == Approx(10).margin(0.02));
    REQUIRE(set.below.size() == 1);
    CHECK(area_of(set.below) == Approx(100 * pi).epsilon(2e-3));
}

TEST_CASE("what is below around a hill is the field with a hole", "[drawing]")
{
    const FigureOnGrid hill(square, 0.5, [](double h, double v) { return -std::hypot(h, v); });
    const LevelSet set = level_set_of(hill, -10);
    CHECK(set.below.size() == 2);
    CHECK(area_of(set.below) == Approx(900 - 100 * pi).epsilon(2e-3));
}

TEST_CASE("a summit exactly at the level leaves no line to draw", "[drawing]")
{
    const FigureOnGrid summit({{rectangle(-5, 5, -5, 5)}}, 5,
                              [](double h, double v) { return h == 0 && v == 0 ? 0 : -1; });
    const LevelSet set = level_set_of(summit, 0);
    CHECK(set.border.empty());
    REQUIRE(set.below.size() == 1);
    CHECK(area_of(set.below) == 100);
    MapFrame frame;
    frame.point_of = [](const Bearing& b) { return Point2(in_degrees(b.h), in_degrees(b.v)); };
    CHECK(path_on(frame, set.border).lines().empty());
    CHECK(path_on(frame, set.below).lines().size() == 1);
}

TEST_CASE("a line without length is not drawn, and does no harm", "[drawing]")
{
    MapFrame frame;
    frame.point_of = [](const Bearing& b) { return Point2(in_degrees(b.h), in_degrees(b.v)); };
    const Bearing here{degrees(1), degrees(2)}, there{degrees(3), degrees(2)};
    const std::vector<BearingLine> lines{
        {{}, true},      {{}, false},           {{here}, true},
        {{here}, false}, {{here, there}, true}, {{here, there}, false}};
    CHECK(path_on(frame, lines).lines().size() == 1);
}

TEST_CASE("straightening keeps corners, drops repeats, and never leaves nothing of a line",
          "[report]")
{
    const auto at = [](double h, double v) { return Bearing{degrees(h), degrees(v)}; };
    const BearingLine corner{{at(0, 0), at(0, 0), at(1, 0), at(2, 0), at(2, 0), at(2, 1), at(0, 0)},
                             true};
    CHECK(straightened(corner).points == std::vector<Bearing>{at(0, 0), at(2, 0), at(2, 1)});
    CHECK(straightened({{at(1, 1), at(1, 1), at(1, 1)}, true}).points.size() == 1);
    CHECK(straightened({{at(0, 0), at(1, 0), at(2, 0), at(1, 0)}, true}).points.size() == 4);
}

TEST_CASE("a plane is cut in a straight line, exactly", "[drawing]")
{
    const FigureOnGrid plane(square, 5, [](double h, double v) { return 2 * h + v; });
    const LevelSet set = level_set_of(plane, 8);
    REQUIRE(set.border.size() == 1);
    CHECK_FALSE(set.border[0].closed);
    for (const Bearing& b : set.border[0].points)
        CHECK(2 * in_degrees(b.h) + in_degrees(b.v) == Approx(8));
    // Below the line h = 4 - v / 2, which leaves the square nowhere but above and below.
    CHECK(area_of(set.below) == Approx(30 * (4 + 15)));
}

TEST_CASE("at a saddle the cell's mean says which corners belong together", "[drawing]")
{
    const auto corners = [](double low, double high) {
        return FigureOnGrid({{rectangle(0, 1, 0, 1)}}, 1,
                            [=](double h, double v) { return h == v ? low : high; });
    };
    // Mean -1: the two corners below are one band; of 1 each corner above is cut off.
    const LevelSet joined = level_set_of(corners(-3, 1), 0);
    CHECK(joined.border.size() == 2);
    CHECK(joined.below.size() == 1);
    CHECK(area_of(joined.below) == Approx(1 - 2 * 0.25 * 0.25 / 2));
    const LevelSet parted = level_set_of(corners(-1, 3), 0);
    CHECK(parted.border.size() == 2);
    CHECK(parted.below.size() == 2);
    CHECK(area_of(parted.below) == Approx(2 * 0.25 * 0.25 / 2));
}

TEST_CASE("a field with a notch is outlined with its notch", "[drawing]")
{
    const FigureOnGrid flat(notched, 5, [](double, double) { return 7; });
    const std::vector<BearingLine> outline = outline_of(flat.grid());
    REQUIRE(outline.size() == 1);
    CHECK(outline[0].points.size() == 6);
    CHECK(area_of(outline) == 75 * 15 + 50 * 15);
    // All below is the whole field, none below is nothing, and neither has a border.
    CHECK(area_of(level_set_of(flat, 8).below) == area_of(outline));
    CHECK(level_set_of(flat, 8).border.empty());
    CHECK(level_set_of(flat, 7).below.empty());
}

TEST_CASE("fields apart from each other keep apart", "[drawing]")
{
    const FigureOnGrid apart({{rectangle(-20, -10, 0, 5), rectangle(10, 20, 0, 5)}}, 5,
                             [](double h, double) { return h; });
    const LevelSet set = level_set_of(apart, 15);
    CHECK(set.below.size() == 2);
    CHECK(area_of(set.below) == Approx(10 * 5 + 5 * 5));
    CHECK(set.border.size() == 1);
}

TEST_CASE("fields that touch in a corner are outlined whole", "[drawing]")
{
    const FigureOnGrid touching({{rectangle(0, 10, 0, 5), rectangle(10, 20, 5, 10)}}, 5,
                                [](double, double) { return 0; });
    CHECK(area_of(outline_of(touching.grid())) == 100);
}

TEST_CASE("where a passage is known it takes the interpolated place", "[drawing]")
{
    const FigureOnGrid step({{rectangle(0, 10, 0, 5)}}, 5,
                            [](double h, double) { return h < 7 ? 1 : -1; });
    const std::vector<Bearing> known{
        {degrees(9), degrees(0)}, {degrees(8), degrees(5)}, {degrees(2), degrees(0)}};
    const LevelSet set = level_set(step.grid(), step.figures(), 0, known);
    REQUIRE(set.border.size() == 1);
    CHECK(set.border[0].points.size() == 2);
    CHECK(area_of(set.below) == Approx(5 * (1 + 2) / 2.0));
}

TEST_CASE("a field of one line has no outline and no level set", "[drawing]")
{
    const FigureOnGrid line({{rectangle(-10, 10, 0, 0)}}, 5, [](double h, double) { return h; });
    CHECK(outline_of(line.grid()).empty());
    CHECK(level_set_of(line, 0).border.empty());
}
