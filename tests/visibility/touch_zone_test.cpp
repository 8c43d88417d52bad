#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

TEST_CASE(
    "a facet all of whose corners start with a steep neighbour's longer skip is not taken as lit",
    "[visibility][certificate]")
{
    // A small face with steep flanks: rays from its three corners skip 1 mm, the flanks' own, and
    // so pass a plate 0.5 mm ahead that hides the face from edge to edge.
    TriangleMesh stump;
    for (const double degree : {0.0, 120.0, 240.0})
        for (const auto& [x, radius] : {std::pair(0.0, 0.4), {-10.0, 0.8}})
            stump.points.push_back(
                {x, radius * cos(degrees(degree)), radius * sin(degrees(degree))});
    stump.facets = {{0, 2, 4}, {0, 1, 3}, {0, 3, 2}, {2, 3, 5}, {2, 5, 4}, {4, 5, 1}, {4, 1, 0}};
    const Watched watched(lamp_behind(stump, {wall(0.5, -5, 5, -5, 5)}));
    const SeenArea seen = watched.certified(0, 0);
    REQUIRE(seen.certified);
    CHECK(in_mm2(seen.visible) > 0.2);     // what corners say of the face: 0.208 mm2
    CHECK(watched.exact_mm2(0, 0) < 0.03); // strips of the flanks, within their skip
    CHECK(in_mm2(seen.low) <= watched.exact_mm2(0, 0) + 1e-9);
}
