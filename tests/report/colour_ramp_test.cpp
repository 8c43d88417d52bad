#include "report/colour_ramp.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace glim;

namespace {

double linear(std::uint8_t code)
{
    const double c = code / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

/// CIE 1976 L*, from the luminance of sRGB (IEC 61966-2-1): another measure than the ramp's own.
double lightness(Colour c)
{
    const double y = 0.2126 * linear(c.red) + 0.7152 * linear(c.green) + 0.0722 * linear(c.blue);
    return 116 * std::cbrt(y) - 16;
}

} // namespace

TEST_CASE("the ramp begins at a neutral grey and ends at an orange", "[report]")
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

TEST_CASE("the ramp darkens in even steps, so that grey print shows it too", "[report]")
{
    const double whole = lightness(ramp_colour(0)) - lightness(ramp_colour(1));
    CHECK(whole > 40);
    for (int i = 0; i < 8; ++i) {
        const double step = lightness(ramp_colour(i / 8.0)) - lightness(ramp_colour((i + 1) / 8.0));
        CHECK(step == Approx(whole / 8).epsilon(0.2));
    }
}
