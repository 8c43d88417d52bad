#include "geometry/triangle_mesh.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

/// Two triangles of 6 and 10 mm2 that share an edge, and a point that nothing uses.
const TriangleMesh two_facets{{{9, 9, 9}, {0, 0, 0}, {3, 0, 0}, {0, 4, 0}, {0, 0, 5}},
                              {{1, 2, 3}, {1, 3, 4}}};

} // namespace

TEST_CASE("an area vector points to where its facet runs counter-clockwise", "[geometry]")
{
    CHECK(area_vector(two_facets, 0) == Vector(0, 0, 6));
    CHECK(area_vector(two_facets, 1) == Vector(10, 0, 0));
    CHECK(area_vector(turned_over(two_facets), 0) == Vector(0, 0, -6));
}

TEST_CASE("the area of a mesh is the sum over its facets", "[geometry]")
{
    CHECK(in_mm2(area_of(two_facets)) == Approx(16));
    CHECK(area_of(TriangleMesh{}) == square_millimetres(0));
    const TriangleMesh degenerate{{{0, 0, 0}, {1, 1, 1}}, {{0, 1, 0}, {1, 1, 1}}};
    CHECK(area_of(degenerate) == square_millimetres(0));
}

TEST_CASE("a part has the facets asked for, and only their points, in their order", "[geometry]")
{
    const std::uint32_t second[] = {1};
    const TriangleMesh part = part_of(two_facets, second);
    REQUIRE(part.points.size() == 3);
    REQUIRE(part.facets.size() == 1);
    CHECK(part.corner(0, 0) == Point(0, 0, 0));
    CHECK(part.corner(0, 1) == Point(0, 4, 0));
    CHECK(part.corner(0, 2) == Point(0, 0, 5));
    CHECK(part_of(two_facets, {}).points.empty());
}

TEST_CASE("a facet may be asked for twice, and comes twice", "[geometry]")
{
    const std::uint32_t twice[] = {1, 0, 1};
    const TriangleMesh part = part_of(two_facets, twice);
    CHECK(part.facets.size() == 3);
    CHECK(part.facets[0] == part.facets[2]);
    CHECK(in_mm2(area_of(part)) == Approx(26));
}

TEST_CASE("a box holds its faces, and is empty until something is added", "[geometry]")
{
    Box box;
    CHECK(box.empty());
    box.add({1, 2, 3});
    CHECK_FALSE(box.empty());
    CHECK(box.holds({1, 2, 3}));
    box.add({-1, 4, 3});
    CHECK(box.size() == Vector(2, 2, 0));
    CHECK(box.centre() == Point(0, 3, 3));
    CHECK(box.holds({-1, 2, 3}));
    CHECK_FALSE(box.holds({-1, 2, 3.001}));
}

TEST_CASE("the box of a mesh holds all its points, used or not", "[geometry]")
{
    CHECK(box_of(two_facets).most == Point(9, 9, 9));
    CHECK(box_of(TriangleMesh{}).empty());
}
