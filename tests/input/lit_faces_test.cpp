#include "input/lit_faces.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("the share against is 0 outward, 1 inward and one half for a closed body", "[input]")
{
    const TriangleMesh outward{{{0, 0, 0}, {0, 1, 0}, {0, 0, 1}}, {{0, 2, 1}}};
    const Direction forward = -Direction::x();
    CHECK(share_against(outward, forward) == 0.0);
    CHECK(share_against(turned_over(outward), forward) == 1.0);
    TriangleMesh tetrahedron{{{0, 0, 0}, {3, 0, 0}, {0, 2, 0}, {0, 0, 1}},
                             {{0, 2, 1}, {0, 1, 3}, {0, 3, 2}, {1, 2, 3}}};
    CHECK(*share_against(tetrahedron, Direction::along({1, 2, 3})) == Approx(0.5));
    CHECK_FALSE(share_against(outward, Direction::y()));
}

TEST_CASE("a lamp without an axis looks the way of its function", "[input]")
{
    Lamp lamp;
    const Vehicle vehicle;
    const auto way = [&](LampFunction function) {
        lamp.function = function;
        return lit_way(lamp, vehicle);
    };
    CHECK(way(LampFunction::front_indicator)->vector() == Vector(-1, 0, 0));
    CHECK(way(LampFunction::stop)->vector() == Vector(1, 0, 0));
    CHECK(way(LampFunction::side_marker)->vector() == Vector(0, -1, 0));
    CHECK_FALSE(way(LampFunction::parking));
    lamp.side = Side::right;
    CHECK(way(LampFunction::side_indicator)->vector() == Vector(0, 1, 0));
    lamp.axis = Direction::x();
    CHECK(way(LampFunction::parking)->vector() == Vector(1, 0, 0));
    CHECK(way(LampFunction::side_indicator)->vector() == Vector(0, 1, 0));
}
