#include "judgement/normal_quantile.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("the quantiles of the normal distribution are those of the tables", "[judgement]")
{
    // M. Abramowitz, I. A. Stegun, "Handbook of Mathematical Functions", table 26.5.
    CHECK(normal_quantile(0.5) == Approx(0).margin(1e-12));
    CHECK(normal_quantile(0.975) == Approx(1.959963984540054).epsilon(1e-12));
    CHECK(normal_quantile(0.995) == Approx(2.575829303548901).epsilon(1e-12));
    CHECK(normal_quantile(0.001) == Approx(-3.090232306167813).epsilon(1e-12));
    CHECK(normal_share_below(1) == Approx(0.841344746068543).epsilon(1e-12));
}

TEST_CASE("the quantile is the inverse of the share", "[judgement]")
{
    for (const double z : {-6.0, -3.0, -1.0, -0.01, 0.3, 2.0, 4.5})
        CHECK(normal_quantile(normal_share_below(z)) == Approx(z).epsilon(1e-9).margin(1e-12));
}
