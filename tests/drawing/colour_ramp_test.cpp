#include "drawing/colour_ramp.h"

#include "specimens/lightness.h"

#include <catch2/catch.hpp>

using namespace glim;
using glim::test::lightness;

TEST_CASE("the ramp begins at a neutral grey and ends at an orange", "[drawing]")
{
    const Colour grey = ramp_colour(0);
    CHECK(grey.red == grey.green);
    CHECK(grey.green == grey.blue);
    const Colour orange = ramp_colour(1);
    CHECK(orange.red > 2 * orange.green);
    CHECK(orange.green > 2 * orange.blue);
    CHECK(ramp_colour(-3) == grey);
    CHECK(ramp_colour(7) == orange);
}

TEST_CASE("the ramp darkens in even steps, so that grey print shows it too", "[drawing]")
{
    const double whole = lightness(ramp_colour(0)) - lightness(ramp_colour(1));
    CHECK(whole > 40);
    for (int i = 0; i < 8; ++i) {
        const double step = lightness(ramp_colour(i / 8.0)) - lightness(ramp_colour((i + 1) / 8.0));
        CHECK(step == Approx(whole / 8).epsilon(0.2));
    }
}
