#include "judgement/surface_taken.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("a surface in the way of two lamps is named once with what it takes of both",
          "[judgement]")
{
    const Standing nose{SurfaceId{4}, false};
    const Standing far_nose{SurfaceId{4}, true};
    const Area one = square_millimetres(1);
    const Blame first{.parts = {{one, {}}, {{}, 2 * one}}, .facets = {{0, 5, true, one}}};
    const Blame second{.parts = {{4 * one, one}}, .facets = {{0, 6, false, 3 * one}}};
    std::vector<SurfaceTaken> taken;
    add_blame(taken, {nose, far_nose}, first);
    add_blame(taken, {far_nose}, second);
    REQUIRE(taken.size() == 2);
    CHECK(taken[0].area.sum() == one);
    REQUIRE(taken[0].facets.size() == 1);
    CHECK(taken[0].facets[0].facet == 5);
    CHECK(taken[1].standing.twin);
    CHECK(taken[1].area.alone == 4 * one);
    CHECK(taken[1].area.jointly == 3 * one);
    REQUIRE(taken[1].facets.size() == 1);
    CHECK(taken[1].facets[0].facet == 6);
    CHECK(taken[1].facets[0].area == 3 * one);
}
