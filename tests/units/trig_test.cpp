#include "units/trig.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("sine and cosine are exact at every multiple of 90 degrees", "[units]")
{
    constexpr double sines[] = {0, 1, 0, -1};
    for (int quarter = -4000; quarter <= 4000; ++quarter) {
        const int place = ((quarter % 4) + 4) % 4;
        CHECK(sin(degrees(90.0 * quarter)) == sines[place]);
        CHECK(cos(degrees(90.0 * quarter)) == sines[(place + 1) % 4]);
    }
}

TEST_CASE("sine and cosine have their known values elsewhere", "[units]")
{
    CHECK(sin(degrees(30)) == Approx(0.5).margin(1e-15));
    CHECK(cos(degrees(60)) == Approx(0.5).margin(1e-15));
    CHECK(tan(degrees(45)) == Approx(1).margin(1e-15));
    CHECK(sin(degrees(-210)) == Approx(0.5).margin(1e-15));
    CHECK(cos(degrees(405)) == Approx(0.70710678118654752).margin(1e-15));
    // 5 degrees, to sixteen digits from the series x - x^3/3! + ... of pi/36.
    CHECK(sin(degrees(5)) == Approx(0.08715574274765818).margin(1e-16));
}

TEST_CASE("the angle of a point is exact on the axes, and 0 at the origin", "[units]")
{
    CHECK(angle_of(0, 1) == degrees(0));
    CHECK(angle_of(1, 0) == degrees(90));
    CHECK(angle_of(-1, 0) == degrees(-90));
    CHECK(angle_of(0, -1) == degrees(180));
    CHECK(angle_of(-0.0, -1) == degrees(180));
    CHECK(angle_of(0, 0) == degrees(0));
    CHECK(angle_of(-0.0, -0.0) == degrees(0));
    CHECK(in_degrees(angle_of(1, 1)) == Approx(45));
    CHECK(in_degrees(angle_of(-1, -1)) == Approx(-135));
}

TEST_CASE("an arc sine takes a sine that rounding has carried beyond 1", "[units]")
{
    CHECK(arc_sine(1.0000000000000002) == degrees(90));
    CHECK(arc_sine(-1.0000000000000002) == degrees(-90));
    CHECK(in_degrees(arc_sine(0.5)) == Approx(30));
}

TEST_CASE("half a turn is pi radians", "[units]")
{
    CHECK(in_radians(degrees(180)) == 3.141592653589793);
}
