#include "generator/outline.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace {

using namespace glim;
using namespace glim::demo;

double area(const Outline& o)
{
    double twice = 0;
    for (std::size_t i = 0; i < o.size(); ++i) {
        const Point2& b = o[(i + 1) % o.size()];
        twice += o[i].x() * b.y() - o[i].y() * b.x();
    }
    return twice / 2;
}

const Outline square = rounded({{{0, 0}, 0}, {{40, 0}, 0}, {{40, 40}, 0}, {{0, 40}, 0}}, 7);

TEST_CASE("rounded corners take (4 - pi) r2 from a square", "[demo]")
{
    const Outline o = rounded({{{0, 0}, 10}, {{40, 0}, 10}, {{40, 40}, 10}, {{0, 40}, 10}}, 0.1);
    CHECK(area(o) == Approx(1600 - (4 - std::numbers::pi) * 100).margin(0.05));
}

TEST_CASE("an outline drawn in by d loses d on every side, corners included", "[demo]")
{
    CHECK(area(drawn_in(square, 5)) == Approx(900));
    CHECK(area(drawn_in(square, -5)) == Approx(2500));
}

TEST_CASE("a cut keeps what lies left of the line, and both parts share its ends", "[demo]")
{
    const Outline left = cut(square, {10, -100}, {10, 100});
    const Outline right = cut(square, {10, 100}, {10, -100});
    CHECK(area(left) == Approx(400));
    CHECK(area(right) == Approx(1200));
    for (const Point2& p : left)
        if (p.x() == 10)
            CHECK(std::find(right.begin(), right.end(), p) != right.end());
}

TEST_CASE("a ray leaves an outline where it crosses it, through corners too", "[demo]")
{
    CHECK((exit_point(square, {20, 20}, {21, 20}) - Point2(40, 20)).norm() < 1e-9);
    CHECK((exit_point(square, {20, 20}, {10, 10}) - Point2(0, 0)).norm() < 1e-9);
    CHECK_THROWS_AS(exit_point(square, {-20, 20}, {-30, 20}), std::runtime_error);
}

} // namespace
