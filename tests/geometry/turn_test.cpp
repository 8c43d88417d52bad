#include "geometry/turn.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace glim;

TEST_CASE("a path turns left, right, or not at all", "[geometry]")
{
    CHECK(turn_of({0, 0}, {1, 0}, {1, 1}) == 1);
    CHECK(turn_of({0, 0}, {1, 0}, {1, -1}) == -1);
    CHECK(turn_of({0, 0}, {1, 0}, {3, 0}) == 0);
    CHECK(turn_of({0, 0}, {0, 0}, {3, 1}) == 0);
}

TEST_CASE("the last bit of a coordinate decides the turn, in every order of the points",
          "[geometry]")
{
    // On the line y = x, one step of a double off it: the plain formula gives 0 for many of these.
    const Point2 a(0.5, 0.5), b(12, 12);
    for (int i = -3; i <= 3; ++i) {
        const Point2 c(24, 24 + i * std::ldexp(1.0, -48));
        const int turn = (i > 0) - (i < 0);
        CHECK(turn_of(a, b, c) == turn);
        CHECK(turn_of(b, c, a) == turn);
        CHECK(turn_of(c, a, b) == turn);
        CHECK(turn_of(b, a, c) == -turn);
        CHECK(turn_of(a, c, b) == -turn);
        CHECK(turn_of(c, b, a) == -turn);
    }
}

TEST_CASE("near places far from the origin are told apart exactly", "[geometry]")
{
    // Steps of 2^-41 at 4000 mm; c is off the line from a through b by one such step at 3 : 1.
    const double step = std::ldexp(1.0, -41);
    const Point2 a(4000, 4000), b(4000 + step, 4000 + 3 * step);
    CHECK(turn_of(a, b, {4000 + 2 * step, 4000 + 6 * step}) == 0);
    CHECK(turn_of(a, b, {4000 + 2 * step, 4000 + 7 * step}) == 1);
    CHECK(turn_of(a, b, {4000 + 2 * step, 4000 + 5 * step}) == -1);
}
