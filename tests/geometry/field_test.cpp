#include "geometry/field.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

FieldRectangle rectangle(double h_least, double h_most, double v_least, double v_most)
{
    return {degrees(h_least), degrees(h_most), degrees(v_least), degrees(v_most)};
}

Bearing at(double h, double v) { return {degrees(h), degrees(v)}; }

double steradians_of(const Field& field) { return in_steradians(solid_angle(field)); }

} // namespace

TEST_CASE("a rectangle holds its edges and corners, and nothing beyond", "[geometry]")
{
    const FieldRectangle r = rectangle(-45, 80, -15, 15);
    for (const double h : {-45.0, 0.0, 80.0})
        for (const double v : {-15.0, 0.0, 15.0})
            CHECK(r.holds(at(h, v)));
    CHECK_FALSE(r.holds(at(-45.000001, 0)));
    CHECK_FALSE(r.holds(at(80.000001, 0)));
    CHECK_FALSE(r.holds(at(0, 15.000001)));
    CHECK_FALSE(r.holds(at(0, -15.000001)));
}

TEST_CASE("a notched field holds what either of its rectangles holds", "[geometry]")
{
    const Field notched{{rectangle(-45, 80, 0, 15), rectangle(-20, 80, -15, 0)}};
    CHECK(notched.holds(at(-45, 0)));
    CHECK(notched.holds(at(-20, -15)));
    CHECK_FALSE(notched.holds(at(-21, -1)));
    CHECK_FALSE(Field{}.holds(at(0, 0)));
}

// Solid angle of a longitude-latitude rectangle: (H2 - H1)(sin V2 - sin V1), H in radians.
// The figures were computed from it by hand, to six places.
TEST_CASE("a field has the solid angle of the closed form", "[geometry]")
{
    CHECK(steradians_of({{rectangle(-45, 80, -15, 15)}}) == Approx(1.129311).margin(5e-7));
    CHECK(steradians_of({{rectangle(-45, 45, -15, 15)}}) == Approx(0.813104).margin(5e-7));
    CHECK(steradians_of({{rectangle(-45, 80, -5, 15)}}) == Approx(0.754800).margin(5e-7));
    CHECK(steradians_of({{rectangle(-20, 20, -10, 10)}}) == Approx(0.242459).margin(5e-7));
    CHECK(steradians_of({{rectangle(-45, 45, -10, 10)}}) == Approx(0.545532).margin(5e-7));
}

TEST_CASE("a field with 20 instead of 45 inboard below the horizontal is smaller", "[geometry]")
{
    const Field down_15{{rectangle(-45, 80, 0, 15), rectangle(-20, 80, -15, 0)}};
    const Field down_5{{rectangle(-45, 80, 0, 15), rectangle(-20, 80, -5, 0)}};
    CHECK(steradians_of(down_15) == Approx(1.016380).margin(5e-7));
    CHECK(steradians_of(down_5) == Approx(0.716771).margin(5e-7));
}

TEST_CASE("the whole sphere is 4 pi steradians", "[geometry]")
{
    CHECK(steradians_of({{rectangle(-180, 180, -90, 90)}}) == Approx(12.566370614359172));
}

TEST_CASE("what lies in several rectangles counts once", "[geometry]")
{
    const Field twice{{rectangle(-45, 80, -15, 15), rectangle(-45, 80, -15, 15)}};
    CHECK(steradians_of(twice) == Approx(1.129311).margin(5e-7));
    const Field crossed{{rectangle(-30, 30, -10, 10), rectangle(-10, 10, -20, 20)}};
    const double first = in_steradians(solid_angle(crossed.rectangles[0]));
    const double second = in_steradians(solid_angle(crossed.rectangles[1]));
    const double both = in_steradians(solid_angle(rectangle(-10, 10, -10, 10)));
    CHECK(steradians_of(crossed) == Approx(first + second - both));
}

TEST_CASE("a line, a point and an empty field have no solid angle", "[geometry]")
{
    CHECK(steradians_of({{rectangle(-45, 80, 0, 0)}}) == 0);
    CHECK(steradians_of({{rectangle(0, 0, 0, 0)}}) == 0);
    CHECK(steradians_of({}) == 0);
}

TEST_CASE("a rectangle has four corners, one with a notch six, and one inner edge is none",
          "[geometry]")
{
    using Corners = std::vector<Bearing>;
    CHECK(corners_of({{rectangle(-45, 80, -15, 15)}}) ==
          Corners{at(-45, -15), at(80, -15), at(-45, 15), at(80, 15)});
    CHECK(corners_of({{rectangle(-45, 80, 0, 15), rectangle(-20, 80, -15, 0)}}) ==
          Corners{at(-20, -15), at(80, -15), at(-45, 0), at(-20, 0), at(-45, 15), at(80, 15)});
    CHECK(corners_of({{rectangle(-45, 0, -15, 15), rectangle(0, 80, -15, 15)}}).size() == 4);
    CHECK(corners_of({{rectangle(-30, 30, -10, 10), rectangle(-10, 10, -20, 20)}}).size() == 12);
}

TEST_CASE("lines and points of a field have their ends for corners", "[geometry]")
{
    using Corners = std::vector<Bearing>;
    CHECK(corners_of({{rectangle(-45, 80, 0, 0)}}) == Corners{at(-45, 0), at(80, 0)});
    CHECK(corners_of({{rectangle(5, 5, 2, 2)}}) == Corners{at(5, 2)});
    CHECK(corners_of({}).empty());
}
