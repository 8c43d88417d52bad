#include "input/read_mesh_openmesh.h"

#include "input/plain_ply.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("OpenMesh returns what the plain writing holds, face by face", "[input]")
{
    PlainPly plain;
    for (const Point& p : {Point(0.1, 0, 0), Point(1, 0, 0), Point(1, 1, 0), Point(0, 1, -2)})
        plain.add_point(p);
    plain.add_face(std::vector<std::uint32_t>{0, 1, 2, 3});
    plain.add_face(std::vector<std::uint32_t>{0, 1, 1});
    plain.add_face(std::vector<std::uint32_t>{0, 1, 1});
    const PolygonSoup soup = read_with_openmesh(plain.bytes());
    CHECK(soup.points ==
          std::vector<Point>{{double{0.1F}, 0, 0}, {1, 0, 0}, {1, 1, 0}, {0, 1, -2}});
    CHECK(soup.sizes == std::vector<std::uint32_t>{4, 3, 3});
    CHECK(soup.corners == std::vector<std::uint32_t>{0, 1, 2, 3, 0, 1, 1, 0, 1, 1});
}

TEST_CASE("the plain writing knows how far floats move a point", "[input]")
{
    PlainPly plain;
    plain.add_point(Point(0, 0, 0));
    plain.add_point(Point(0.5, 0, 0));
    CHECK(plain.most_rounding() == 0);
    plain.add_point(Point(0, 0.1, 0));
    CHECK(plain.most_rounding() == Approx(0.1F - 0.1));
    CHECK(plain.longest_side() == 0.5);
}
