#include "geometry/facet_tree.h"

#include "geometry/facet_distance.h"

#include <catch2/catch.hpp>

#include <random>

using namespace glim;

namespace {

TriangleMesh scattered(std::size_t facets)
{
    std::mt19937 random(7);
    const auto coordinate = [&] { return double(random() % 10000) / 100; };
    TriangleMesh mesh;
    for (std::uint32_t f = 0; f < facets; ++f) {
        const Point corner(coordinate(), coordinate(), coordinate());
        for (int i = 0; i < 3; ++i)
            mesh.points.push_back(corner + Vector(coordinate(), coordinate(), coordinate()) / 10);
        mesh.facets.push_back({3 * f, 3 * f + 1, 3 * f + 2});
    }
    return mesh;
}

} // namespace

TEST_CASE("the nearest facet is the one that looking at all of them finds", "[geometry]")
{
    const TriangleMesh mesh = scattered(300);
    const FacetTree tree(mesh);
    std::mt19937 random(11);
    for (int trial = 0; trial < 200; ++trial) {
        const Point p(double(random() % 120), double(random() % 120), double(random() % 120));
        std::size_t best = 0;
        for (std::size_t f = 1; f < mesh.facets.size(); ++f)
            if (distance_to_facet(mesh, f, p) < distance_to_facet(mesh, best, p))
                best = f;
        const std::optional<NearestFacet> found = tree.nearest(p);
        REQUIRE(found);
        CHECK(found->facet == best);
        CHECK(in_mm(found->distance) == Approx(in_mm(distance_to_facet(mesh, best, p))));
    }
}

TEST_CASE("nothing is near where nothing is, or nothing within reach", "[geometry]")
{
    const TriangleMesh none;
    CHECK_FALSE(FacetTree(none).nearest(Point(0, 0, 0)));
    const TriangleMesh one{{{0, 0, 5}, {1, 0, 5}, {0, 1, 5}}, {{0, 1, 2}}};
    CHECK_FALSE(FacetTree(one).nearest(Point(0, 0, 0), millimetres(4.9)));
    CHECK(FacetTree(one).nearest(Point(0, 0, 0), millimetres(5)));
}
