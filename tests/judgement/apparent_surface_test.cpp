#include "judgement/apparent_surface.h"

#include "shapes/simple_shapes.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("of a box, the apparent surface along an axis is the face that looks there",
          "[judgement]")
{
    const TriangleMesh box = shapes::box({0, 0, 0}, {30, 20, 10});
    const TriangleMesh front = apparent_surface(box, Direction::x());
    CHECK(front.facets.size() == 2);
    const SeenAlong seen = seen_along(front, Direction::x());
    CHECK(in_mm2(seen.area) == Approx(200));
    CHECK((seen.centroid - Point(30, 10, 5)).norm() < 1e-12);
    // From a corner three faces: (20 x 10 + 30 x 10 + 30 x 20) / sqrt(3).
    const Direction aslant = Direction::along(Vector(1, 1, 1));
    const TriangleMesh three = apparent_surface(box, aslant);
    CHECK(three.facets.size() == 6);
    CHECK(in_mm2(seen_along(three, aslant).area) == Approx(1100 / std::sqrt(3.0)));
}

TEST_CASE("facets without area have no face to show", "[judgement]")
{
    TriangleMesh mesh = shapes::plate({0, 0, 0}, 10, 10);
    mesh.facets.push_back({0, 0, 1});
    CHECK(apparent_surface(mesh, Direction::x()).facets.size() == 2);
}
