#include "geometry/chord_error.h"

#include "geometry/placement.h"
#include "geometry/weld.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace glim;

namespace {

/// A cylinder wall of radius `radius` about z, from angle 0 to `span` in `steps` strips of quads
/// that are cut in two, `rows` of them one above the other.
TriangleMesh cylinder_wall(double radius, Angle span, int steps, int rows = 1)
{
    TriangleMesh mesh;
    for (int row = 0; row <= rows; ++row)
        for (int i = 0; i <= steps; ++i) {
            const Angle at = span * (static_cast<double>(i) / steps);
            mesh.points.emplace_back(radius * cos(at), radius * sin(at), 40.0 * row);
        }
    const auto place = [&](int row, int i) {
        return static_cast<std::uint32_t>(row * (steps + 1) + i);
    };
    for (int row = 0; row < rows; ++row)
        for (int i = 0; i < steps; ++i) {
            mesh.facets.push_back({place(row, i), place(row, i + 1), place(row + 1, i + 1)});
            mesh.facets.push_back({place(row, i), place(row + 1, i + 1), place(row + 1, i)});
        }
    return mesh;
}

/// An octahedron whose facets are cut in four `times` times, every corner on the sphere.
TriangleMesh sphere(double radius, int times)
{
    TriangleMesh mesh;
    mesh.points = {{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {0, 0, 1}, {0, 0, -1}};
    mesh.facets = {{0, 2, 4}, {2, 1, 4}, {1, 3, 4}, {3, 0, 4},
                   {2, 0, 5}, {1, 2, 5}, {3, 1, 5}, {0, 3, 5}};
    for (int n = 0; n < times; ++n) {
        TriangleMesh finer{mesh.points, {}};
        for (const Facet& f : mesh.facets) {
            const auto first = static_cast<std::uint32_t>(finer.points.size());
            for (int i = 0; i < 3; ++i)
                finer.points.emplace_back(
                    (mesh.points[f[i]] + mesh.points[f[(i + 1) % 3]]).normalized());
            finer.facets.push_back({f[0], first, first + 2});
            finer.facets.push_back({f[1], first + 1, first});
            finer.facets.push_back({f[2], first + 2, first + 1});
            finer.facets.push_back({first, first + 1, first + 2});
        }
        mesh = welded(finer);
    }
    for (Point& p : mesh.points)
        p *= radius;
    return mesh;
}

/// How deep below the sphere the deepest point of the facets lies that are the 95 % nearest.
double true_depth(const TriangleMesh& mesh, double radius)
{
    std::vector<double> depths;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        depths.push_back(radius -
                         area_vector(mesh, f).normalized().dot(mesh.points[mesh.facets[f][0]]));
    std::sort(depths.begin(), depths.end());
    return depths[depths.size() * 95 / 100];
}

} // namespace

// The farthest point of an arc over its chord: R (1 - cos(s / 2)).
TEST_CASE("a cylinder's chord error is the height of its arcs over their chords", "[geometry]")
{
    for (const int steps : {18, 45, 180}) {
        const Angle step = degrees(180) / steps;
        const double sagitta = 80 * (1 - cos(step / 2));
        INFO(steps);
        CHECK(in_mm(chord_error(cylinder_wall(80, degrees(180), steps, 3))) ==
              Approx(sagitta).epsilon(2e-3));
    }
}

TEST_CASE("a sphere's chord error is told within a quarter", "[geometry]")
{
    for (const int times : {3, 4, 5}) {
        const TriangleMesh mesh = sphere(100, times);
        const double told = in_mm(chord_error(mesh));
        INFO(times);
        CHECK(told >= 0.95 * true_depth(mesh, 100));
        CHECK(told <= 1.25 * true_depth(mesh, 100));
    }
}

TEST_CASE("a plane has no chord error, and neither has a box", "[geometry]")
{
    TriangleMesh plane;
    plane.points = {{0, 0, 0}, {10, 0, 0}, {10, 10, 0}, {0, 10, 0}};
    plane.facets = {{0, 1, 2}, {0, 2, 3}};
    CHECK(in_mm(chord_error(plane)) == 0);
    CHECK(in_mm(chord_error({})) == 0);
    // Four strips of a quarter turn each: creases, not a coarse cylinder.
    CHECK(in_mm(chord_error(cylinder_wall(50, degrees(360), 4))) == 0);
    CHECK(in_mm(chord_error(cylinder_wall(50, degrees(360), 13))) > 0);
}

TEST_CASE("facets wound against their neighbours tell the same chord error", "[geometry]")
{
    TriangleMesh wall = cylinder_wall(80, degrees(90), 10, 3);
    const Length before = chord_error(wall);
    for (std::size_t f = 0; f < wall.facets.size(); f += 2)
        std::swap(wall.facets[f][0], wall.facets[f][1]);
    CHECK(in_mm(chord_error(wall)) == Approx(in_mm(before)));
}

TEST_CASE("a chord error does not depend on where the mesh lies", "[geometry]")
{
    const TriangleMesh wall = cylinder_wall(80, degrees(90), 10);
    const Placement turned =
        Placement::turn(Point(3, 2, 1), Direction::along(Vector(1, 2, 3)), degrees(40));
    CHECK(in_mm(chord_error(placed(wall, turned))) == Approx(in_mm(chord_error(wall))));
}
