#include "remedy/refine_surface.h"

#include "geometry/edge_uses.h"
#include "shapes/simple_shapes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace glim;

namespace {

NumberedMesh square()
{
    NumberedMesh numbered;
    numbered.mesh.points = {{0, 0, 0}, {100, 0, 0}, {100, 100, 0}, {0, 100, 0}};
    numbered.mesh.facets = {{0, 1, 2}, {0, 2, 3}};
    numbered.of = {4, 9};
    return numbered;
}

/// Halves what is longer than `longest` near the first corner.
NumberedMesh refined(NumberedMesh numbered, double longest, int rounds)
{
    for (int r = 0; r < rounds; ++r) {
        std::vector<std::uint8_t> marked(numbered.mesh.facets.size(), 0);
        for (std::size_t f = 0; f < marked.size(); ++f) {
            const bool near = numbered.mesh.corner(f, 0).norm() < 30 ||
                              numbered.mesh.corner(f, 1).norm() < 30 ||
                              numbered.mesh.corner(f, 2).norm() < 30;
            marked[f] = near && longest_edge(numbered.mesh, f, Direction::z()) > longest ? 1 : 0;
        }
        numbered = with_halved_edges(numbered, marked, Direction::z());
    }
    return numbered;
}

double least_angle_deg(const TriangleMesh& mesh)
{
    double least = 180;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        for (int i = 0; i < 3; ++i) {
            const Vector a = mesh.corner(f, (i + 1) % 3) - mesh.corner(f, i);
            const Vector b = mesh.corner(f, (i + 2) % 3) - mesh.corner(f, i);
            const double cosine = a.dot(b) / (a.norm() * b.norm());
            least = std::min(least, std::acos(cosine) * 180 / std::numbers::pi);
        }
    return least;
}

} // namespace

TEST_CASE("a refined surface is the same surface, without gaps, and its facets keep their number",
          "[remedy]")
{
    const NumberedMesh fine = refined(square(), 2, 30);
    CHECK(fine.mesh.facets.size() > 200);
    CHECK(in_mm2(area_of(fine.mesh)) == Approx(10000));
    REQUIRE(fine.of.size() == fine.mesh.facets.size());
    double of_first = 0;
    for (std::size_t f = 0; f < fine.of.size(); ++f) {
        CHECK((fine.of[f] == 4 || fine.of[f] == 9));
        of_first += fine.of[f] == 4 ? area_vector(fine.mesh, f).norm() : 0;
        CHECK(area_vector(fine.mesh, f).z() > 0);
    }
    CHECK(of_first == Approx(5000));
    // Edges of one facet only lie on the rim of the square.
    const std::vector<EdgeUse> uses = edge_uses(fine.mesh);
    for (std::size_t i = 0; i < uses.size(); ++i) {
        const bool shared = (i > 0 && uses[i].same_edge(uses[i - 1])) ||
                            (i + 1 < uses.size() && uses[i].same_edge(uses[i + 1]));
        const Point middle = (fine.mesh.points[uses[i].from] + fine.mesh.points[uses[i].to]) / 2;
        const bool rim =
            middle.x() == 0 || middle.y() == 0 || middle.x() == 100 || middle.y() == 100;
        CHECK(shared != rim);
    }
}

TEST_CASE("angles stay at least half of what they were, however often edges are halved", "[remedy]")
{
    CHECK(least_angle_deg(refined(square(), 1, 40).mesh) >= 22.5);
}

TEST_CASE("an edge of three facets is halved in all three", "[remedy]")
{
    NumberedMesh fins = square();
    fins.mesh.points.emplace_back(50, 50, 80);
    fins.mesh.facets.push_back({0, 2, 4});
    fins.of.push_back(1);
    const NumberedMesh fine = with_halved_edges(fins, {1, 0, 0}, Direction::z());
    CHECK(fine.mesh.facets.size() >= 6);
    double area = 0;
    for (std::size_t f = 0; f < fine.mesh.facets.size(); ++f) {
        area += area_vector(fine.mesh, f).norm();
        for (int i = 0; i < 3; ++i) { // no facet keeps the whole edge
            const auto a = fine.mesh.facets[f][i];
            const auto b = fine.mesh.facets[f][(i + 1) % 3];
            CHECK_FALSE((std::min(a, b) == 0 && std::max(a, b) == 2));
        }
    }
    CHECK(area == Approx(in_mm2(area_of(fins.mesh))));
}

TEST_CASE("what is along the push counts a quarter of its length", "[remedy]")
{
    CHECK(counted_length({3, 4, 0}, Direction::z()) == Approx(5));
    CHECK(counted_length({0, 0, 8}, Direction::z()) == Approx(2));
}
