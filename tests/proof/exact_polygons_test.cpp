#include "shapes/exact_polygons.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

/// Legs of 8 along both axes: 32 mm2.
const std::array<Point2, 3> facet = {Point2(0, 0), Point2(8, 0), Point2(0, 8)};

CutCover whole(const Point2& a, const Point2& b, const Point2& c)
{
    return {.corners = {a, b, c}, .side = {1, 1, 1}};
}

double left_mm2(const std::vector<CutCover>& covers)
{
    return in_mm2(exactly_uncovered(facet, covers));
}

} // namespace

TEST_CASE("nothing over a triangle leaves all of it, exactly, however it winds", "[proof]")
{
    CHECK(left_mm2({}) == 32);
    CHECK(in_mm2(exactly_uncovered(std::array{facet[0], facet[2], facet[1]}, {})) == 32);
    CHECK(in_mm2(exactly_uncovered(std::array{facet[0], facet[1], facet[1]}, {})) == 0);
}

TEST_CASE("covers of either winding, twice or side by side take each place once", "[proof]")
{
    const CutCover lower = whole({0, 0}, {8, 0}, {0, 4});
    const CutCover turned = whole({0, 4}, {8, 0}, {0, 0});
    CHECK(left_mm2({lower}) == 16);
    CHECK(left_mm2({turned}) == 16);
    CHECK(left_mm2({lower, turned, lower}) == 16);
    CHECK(left_mm2({lower, whole({0, 4}, {8, 0}, {0, 8})}) == 0);
    CHECK(left_mm2({whole({-9, -9}, {30, -9}, {-9, 30})}) == 0);
}

TEST_CASE("a cover in the midst leaves a ring, and one beside leaves all", "[proof]")
{
    CHECK(left_mm2({whole({1, 1}, {3, 1}, {1, 3})}) == 30);
    CHECK(left_mm2({whole({8, 8}, {9, 8}, {8, 9})}) == 32);
    CHECK(left_mm2({whole({4, 4}, {9, 9}, {4, 9})}) == 32); // touches the long side
}

TEST_CASE("only the part of a cover whose side is above zero counts", "[proof]")
{
    // Over all of the facet; above zero where x > 2: a triangle with legs of 6 is hidden.
    const CutCover sloping{.corners = {Point2(0, 0), Point2(8, 0), Point2(0, 8)},
                           .side = {-2, 6, -2}};
    CHECK(left_mm2({sloping}) == 32 - 18);
    CHECK(left_mm2({{.corners = sloping.corners, .side = {0, 0, 0}}}) == 32);
    CHECK(left_mm2({{.corners = sloping.corners, .side = {0, 1, 0}}}) == 0);
    CHECK(left_mm2({{.corners = sloping.corners, .side = {0, -1, 0}}}) == 32);
}

TEST_CASE("covers without area hide nothing", "[proof]")
{
    CHECK(left_mm2({whole({1, 1}, {3, 3}, {2, 2}), whole({1, 1}, {1, 1}, {2, 1})}) == 32);
}
