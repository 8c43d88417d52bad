#include "remedy/freed_area.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("the share that is freed grows as the square from a corner, and back", "[remedy]")
{
    const LitPiece piece{{0, 1, 2}, 8};
    CHECK(share_freed(piece, 0) == 0);
    CHECK(share_freed(piece, 1) == Approx(0.5));
    CHECK(share_freed(piece, 0.5) == Approx(0.125));
    CHECK(share_freed(piece, 1.5) == Approx(0.875));
    CHECK(share_freed(piece, 2) == 1);
    CHECK(share_freed({{3, 3, 3}, 1}, 2.9) == 0);
    CHECK(share_freed({{3, 3, 3}, 1}, 3) == 1);
}

TEST_CASE("the least depth frees just what is needed", "[remedy]")
{
    const std::vector<LitPiece> pieces = {{{-1, -1, -1}, 100}, {{2, 2, 4}, 50}, {{4, 6, 6}, 50}};
    CHECK(depth_that_frees(pieces, 90) == 0.0);
    CHECK(*depth_that_frees(pieces, 150) == Approx(4).margin(1e-3));
    CHECK(*depth_that_frees(pieces, 200) == Approx(6).margin(1e-3));
    CHECK(area_freed(pieces, *depth_that_frees(pieces, 130)) == Approx(130).margin(1e-6));
    CHECK_FALSE(depth_that_frees(pieces, 201));
}

TEST_CASE("what no depth frees is never counted", "[remedy]")
{
    const std::vector<LitPiece> pieces = {{{0, 0, 0}, 10}, {{no_depth, no_depth, no_depth}, 10}};
    CHECK(area_freed(pieces, 1e6) == Approx(10));
    CHECK_FALSE(depth_that_frees(pieces, 11));
}
