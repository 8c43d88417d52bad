#include "geometry/direction_grid.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;

namespace {

FieldRectangle rectangle(double h_least, double h_most, double v_least, double v_most)
{
    return {degrees(h_least), degrees(h_most), degrees(v_least), degrees(v_most)};
}

const Field signal_field{{rectangle(-45, 80, -15, 15)}};
const Field notched_field{{rectangle(-45, 80, 0, 15), rectangle(-20, 80, -15, 0)}};
const Field odd_field{{rectangle(-44.7, 80.3, -4.9, 15.2), rectangle(-3.3, 12.1, -21.4, 17.7)}};

double weight_sum(const DirectionGrid& grid)
{
    SolidAngle sum;
    for (const SolidAngle weight : grid.weights)
        sum += weight;
    return in_steradians(sum);
}

bool has_node(const DirectionGrid& grid, Angle h, Angle v)
{
    return std::count(grid.nodes.begin(), grid.nodes.end(), Bearing{h, v}) == 1;
}

} // namespace

TEST_CASE("a step that divides the field gives one node a line and column", "[geometry]")
{
    CHECK(grid_of(signal_field, degrees(1)).nodes.size() == 126 * 31);
    CHECK(grid_of(signal_field, degrees(5)).nodes.size() == 26 * 7);
    // 125 x 15 degrees with both edges above the horizontal, 100 x 15 below it.
    CHECK(grid_of(notched_field, degrees(1)).nodes.size() == 126 * 16 + 101 * 15);
}

TEST_CASE("every corner of every rectangle is a node, at any step", "[geometry]")
{
    for (const Field& field : {signal_field, notched_field, odd_field})
        for (const double step : {0.3, 1.0, 2.0, 7.0, 1000.0}) {
            const DirectionGrid grid = grid_of(field, degrees(step));
            for (const FieldRectangle& r : field.rectangles)
                for (const Angle h : {r.h_least, r.h_most})
                    for (const Angle v : {r.v_least, r.v_most})
                        CHECK(has_node(grid, h, v));
        }
}

TEST_CASE("all nodes lie in the field, once each, in order of V and then H", "[geometry]")
{
    for (const Field& field : {signal_field, notched_field, odd_field}) {
        const DirectionGrid grid = grid_of(field, degrees(0.7));
        for (const Bearing& node : grid.nodes)
            CHECK(field.holds(node));
        for (std::size_t i = 1; i < grid.nodes.size(); ++i) {
            const Bearing &before = grid.nodes[i - 1], &after = grid.nodes[i];
            CHECK((before.v < after.v || (before.v == after.v && before.h < after.h)));
        }
    }
}

TEST_CASE("neighbours on a line are never more than a step apart", "[geometry]")
{
    const DirectionGrid grid = grid_of(odd_field, degrees(2));
    for (std::size_t i = 1; i < grid.nodes.size(); ++i)
        if (grid.nodes[i].v == grid.nodes[i - 1].v)
            CHECK(grid.nodes[i].h - grid.nodes[i - 1].h <= degrees(2 + 1e-9));
}

TEST_CASE("the weights add up to the field's solid angle, notched ones too", "[geometry]")
{
    for (const double step : {0.5, 1.0, 3.0, 7.0, 1000.0}) {
        CHECK(weight_sum(grid_of(signal_field, degrees(step))) == Approx(1.129311).margin(5e-7));
        CHECK(weight_sum(grid_of(notched_field, degrees(step))) == Approx(1.016380).margin(5e-7));
        CHECK(weight_sum(grid_of(odd_field, degrees(step))) ==
              Approx(in_steradians(solid_angle(odd_field))).epsilon(1e-12));
    }
}

TEST_CASE("a node in the middle weighs more than one on an edge, and that more than a corner's",
          "[geometry]")
{
    const DirectionGrid grid = grid_of({{rectangle(-1, 1, -1, 1)}}, degrees(1));
    REQUIRE(grid.nodes.size() == 9);
    CHECK(grid.weights[4] / grid.weights[3] == Approx(2));
    CHECK(grid.weights[4] / grid.weights[0] == Approx(4).epsilon(1e-3));
}

TEST_CASE("a line of directions and a single one have nodes without weight", "[geometry]")
{
    const DirectionGrid line = grid_of({{rectangle(-45, 45, 0, 0)}}, degrees(15));
    CHECK(line.nodes.size() == 7);
    CHECK(weight_sum(line) == 0);
    const DirectionGrid point = grid_of({{rectangle(3.5, 3.5, -2, -2)}}, degrees(1));
    REQUIRE(point.nodes.size() == 1);
    CHECK(point.nodes[0] == Bearing{degrees(3.5), degrees(-2)});
    CHECK(weight_sum(point) == 0);
}
