#include "geometry/facet_distance.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

/// The right-angled triangle with legs of 4 along x and 3 along y.
const TriangleMesh triangle{{{0, 0, 0}, {4, 0, 0}, {0, 3, 0}}, {{0, 1, 2}}};

double distance(const Point& p) { return in_mm(distance_to_facet(triangle, 0, p)); }

} // namespace

TEST_CASE("the nearest point lies inside, on an edge or at a corner", "[geometry]")
{
    CHECK(nearest_on_facet(triangle, 0, {1, 1, 5}).isApprox(Point(1, 1, 0)));
    CHECK(distance({1, 1, -5}) == Approx(5));
    CHECK(distance({2, -2, 0}) == Approx(2));
    CHECK(distance({-3, -4, 0}) == Approx(5));
    // The hypotenuse 3x + 4y = 12 is (3 * 4 + 4 * 3 - 12) / 5 = 2.4 away from (4, 3).
    CHECK(distance({4, 3, 0}) == Approx(2.4));
    CHECK(distance({0, 7, 3}) == Approx(5));
}

TEST_CASE("a facet without area is the line or the point that it is", "[geometry]")
{
    const TriangleMesh line{{{0, 0, 0}, {4, 0, 0}, {2, 0, 0}}, {{0, 1, 2}, {1, 1, 1}}};
    CHECK(in_mm(distance_to_facet(line, 0, {3, 4, 0})) == Approx(4));
    CHECK(in_mm(distance_to_facet(line, 1, {4, 3, 4})) == Approx(5));
}
