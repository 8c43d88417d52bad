#include "remedy/least_sight.h"

#include "remedy/keep_clear_scenes.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

// A flat face shows the cosine of the angle to its normal.
TEST_CASE("a flat face shows least in the corner farthest from its normal", "[remedy]")
{
    const LeastSight least =
        least_sight(shapes::plate(Point(0, 0, 0), 150, 60, 3), Field{{field(-45, 60, -15, 10)}});
    CHECK(in_degrees(least.from.h) == Approx(60));
    CHECK(in_degrees(least.from.v) == Approx(-15));
    CHECK(in_mm2(least.shown) == Approx(9000 * cos(degrees(60)) * cos(degrees(15))));
}

TEST_CASE("what is lacking by rounding alone does not make a lens too small", "[remedy]")
{
    CHECK_FALSE(is_too_small(square_millimetres(1250 - 1e-7), square_millimetres(1250)));
    CHECK(is_too_small(square_millimetres(1249.99), square_millimetres(1250)));
    CHECK_FALSE(is_too_small(Area(), Area()));
}
