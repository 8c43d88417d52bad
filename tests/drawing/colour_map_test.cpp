#include "drawing/colour_map.h"

#include "specimens/lightness.h"

#include <catch2/catch.hpp>

using namespace glim;
using glim::test::lightness;

TEST_CASE("cividis begins and ends as published", "[drawing]")
{
    // matplotlib's _cividis_data: (0.0, 0.135112, 0.304751), (0.488697, 0.485318, 0.471008) and
    // (0.995737, 0.909344, 0.217772), in bytes.
    CHECK(cividis(0) == Colour{0, 34, 78});
    CHECK(cividis(128.0 / 255) == Colour{125, 124, 120});
    CHECK(cividis(1) == Colour{254, 232, 56});
    CHECK(cividis(-1) == cividis(0));
    CHECK(cividis(2) == cividis(1));
}

TEST_CASE("cividis never darkens on its way up", "[drawing]")
{
    for (int i = 1; i < 256; ++i) {
        const double step = lightness(cividis(i / 255.0)) - lightness(cividis((i - 1) / 255.0));
        // Rounding to bytes moves a colour by less than this; unrounded, L* never falls.
        CHECK(step > -0.02);
        CHECK(step < 0.6);
    }
}

TEST_CASE("the diverging map is a neutral light grey at zero and darkens alike to both sides",
          "[report]")
{
    const Colour middle = diverging(0);
    CHECK(middle.red == middle.green);
    CHECK(middle.green == middle.blue);
    double above = lightness(middle);
    for (int i = 1; i <= 50; ++i) {
        const double low = lightness(diverging(-i / 50.0)), high = lightness(diverging(i / 50.0));
        CHECK(low == Approx(high).margin(1.5));
        CHECK(high < above);
        above = high;
    }
    // Half of the way darkens by half.
    const double whole = lightness(middle) - lightness(diverging(1));
    CHECK(lightness(middle) - lightness(diverging(0.5)) == Approx(whole / 2).margin(whole / 20));
}

TEST_CASE("below zero is orange and above it blue, told apart by those who confuse red and green",
          "[report]")
{
    CHECK(diverging(-1).red > 2 * diverging(-1).blue);
    CHECK(diverging(1).blue > 2 * diverging(1).red);
    CHECK(diverging(-5) == diverging(-1));
    CHECK(diverging(5) == diverging(1));
}
