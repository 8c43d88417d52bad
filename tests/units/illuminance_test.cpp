#include "units/illuminance.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("light thins out with the square of the distance", "[units]")
{
    // 175 cd at 25 m: 175 / 625 lx.
    CHECK(in_lux(illuminance(candelas(175), millimetres(25000))) == Approx(0.28).epsilon(1e-12));
    CHECK(in_lux(illuminance(candelas(175), millimetres(50000))) == Approx(0.07).epsilon(1e-12));
    CHECK(in_lux(illuminance(candelas(1), millimetres(1000))) == 1);
}

TEST_CASE("an intensity is what its illuminance was measured from", "[units]")
{
    CHECK(in_candelas(intensity_from(lux(0.28), millimetres(25000))) == Approx(175).epsilon(1e-12));
    for (const double metres : {3.162, 10.0, 31.6})
        CHECK(in_candelas(intensity_from(illuminance(candelas(0.3), millimetres(metres * 1000)),
                                         millimetres(metres * 1000))) ==
              Approx(0.3).epsilon(1e-12));
}
