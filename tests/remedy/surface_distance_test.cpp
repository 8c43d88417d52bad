#include "remedy/surface_distance.h"

#include "shapes/simple_shapes.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace glim;
using namespace glim::shapes;

TEST_CASE("on a plane the way along the surface is a few percent longer than the straight one",
          "[remedy]")
{
    const TriangleMesh mesh = plate(Point::Zero(), 400, 400, 20);
    const std::array meshes = {&mesh};
    // A corner of the plate.
    const Point start(0, -200, -200);
    const auto distances = distances_along(meshes, start);
    REQUIRE(distances.front().size() == mesh.facets.size());
    double worst = 1;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
        const Point c = (mesh.corner(f, 0) + mesh.corner(f, 1) + mesh.corner(f, 2)) / 3;
        const double straight = (c - start).norm();
        CHECK(in_mm(distances.front()[f]) >= straight - 1e-9);
        if (straight > 50)
            worst = std::max(worst, in_mm(distances.front()[f]) / straight);
    }
    // Ways along a square grid with both its diagonals: 1 / cos(22.5 deg) = 1.082 at worst, and the
    // last piece from a corner to the facet's centre.
    CHECK(worst < 1.12);
}

TEST_CASE("the way along a surface goes round its corner and not through the air", "[remedy]")
{
    // The front of a box and its side: from one end to the other 100 + 200 mm along the skin.
    const TriangleMesh mesh = box({-200, -50, -1}, {0, 50, 1});
    const std::array meshes = {&mesh};
    const auto distances = distances_along(meshes, Point(0, -50, 0));
    for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
        const Point c = (mesh.corner(f, 0) + mesh.corner(f, 1) + mesh.corner(f, 2)) / 3;
        const bool far_side = area_vector(mesh, f).y() > 0;
        if (far_side)
            CHECK(in_mm(distances.front()[f]) >= 100 + std::abs(c.x()) - 1);
    }
}

TEST_CASE("a piece that touches nothing is reached through the air", "[remedy]")
{
    const TriangleMesh mesh = joined(plate(Point::Zero(), 100, 100, 4),
                                     moved(plate(Point::Zero(), 100, 100, 4), {0, 500, 0}));
    const std::array meshes = {&mesh};
    const auto distances = distances_along(meshes, Point(0, 0, 0));
    for (const Length distance : distances.front())
        CHECK(std::isfinite(in_mm(distance)));
    CHECK(in_mm(distances.front().back()) == Approx(500).margin(75));
}
