#include "drawing/surface_section.h"

#include <catch2/catch.hpp>

#include <numeric>

using namespace glim;

namespace {

/// The six sides of a cube of 10 mm, the corner of least coordinates at the origin.
TriangleMesh cube()
{
    TriangleMesh mesh;
    for (int i = 0; i < 8; ++i)
        mesh.points.emplace_back(10.0 * (i & 1), 10.0 * (i >> 1 & 1), 10.0 * (i >> 2 & 1));
    for (const auto& q : std::vector<std::array<std::uint32_t, 4>>{
             {0, 2, 3, 1}, {4, 5, 7, 6}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 4, 6, 2}, {1, 3, 7, 5}}) {
        mesh.facets.push_back({q[0], q[1], q[2]});
        mesh.facets.push_back({q[0], q[2], q[3]});
    }
    return mesh;
}

double length_of(const SectionLine& line)
{
    double length = 0;
    for (std::size_t i = 0; i < line.points.size(); ++i)
        if (i + 1 < line.points.size() || line.closed)
            length += (line.points[(i + 1) % line.points.size()].at - line.points[i].at).norm();
    return length;
}

} // namespace

TEST_CASE("a plane cuts a cube in one closed square", "[drawing]")
{
    const auto lines = surface_section(cube(), {}, {0, 0, 3}, Direction::z());
    REQUIRE(lines.size() == 1);
    CHECK(lines[0].closed);
    CHECK(length_of(lines[0]) == Approx(40));
    for (const SectionPoint& p : lines[0].points)
        CHECK(p.at.z() == Approx(3));
}

TEST_CASE("figures are taken along the edges that are cut", "[drawing]")
{
    const TriangleMesh mesh = cube();
    std::vector<double> heights;
    for (const Point& p : mesh.points)
        heights.push_back(2 * p.z());
    for (const SectionLine& line : surface_section(mesh, heights, {0, 0, 3}, Direction::z()))
        for (const SectionPoint& p : line.points)
            CHECK(p.figure == Approx(6));
}

TEST_CASE("a plane beside the mesh cuts nothing, one through corners no more than once",
          "[drawing]")
{
    CHECK(surface_section(cube(), {}, {0, 0, 11}, Direction::z()).empty());
    const auto lines = surface_section(cube(), {}, {0, 0, 10}, Direction::z());
    CHECK(lines.size() == 1);
}
