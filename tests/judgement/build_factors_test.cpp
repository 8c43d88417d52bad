#include "judgement/build_factors.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace glim;

namespace {

Tolerance up(Spread spread, double figure, double sigmas = 3)
{
    Tolerance tolerance;
    tolerance.spread = spread;
    tolerance.sigmas = sigmas;
    tolerance.by[static_cast<std::size_t>(ToleranceWay::up)] = figure;
    return tolerance;
}

/// Standard deviation over evenly spread shares.
double spread_of(const Tolerance& tolerance)
{
    constexpr int count = 20000;
    double squares = 0;
    for (int i = 0; i < count; ++i)
        squares += std::pow(deviation(tolerance, ToleranceWay::up, (i + 0.5) / count), 2);
    return std::sqrt(squares / count);
}

} // namespace

TEST_CASE("what a figure means goes by its distribution", "[judgement]")
{
    // Standard deviations on paper: t, t / sqrt 3, t / sqrt 6, t / sigmas.
    CHECK(spread_of(up(Spread::normal, 2)) == Approx(2).epsilon(1e-3));
    CHECK(spread_of(up(Spread::uniform, 2)) == Approx(2 / std::sqrt(3)).epsilon(1e-3));
    CHECK(spread_of(up(Spread::triangular, 2)) == Approx(2 / std::sqrt(6)).epsilon(1e-3));
    CHECK(spread_of(up(Spread::limits, 2, 4)) == Approx(0.5).epsilon(1e-3));
}

TEST_CASE("half of the builds are off to either side", "[judgement]")
{
    for (const Spread spread :
         {Spread::normal, Spread::uniform, Spread::triangular, Spread::limits}) {
        CHECK(deviation(up(spread, 2), ToleranceWay::up, 0.5) == Approx(0).margin(1e-12));
        CHECK(deviation(up(spread, 2), ToleranceWay::up, 0.2) ==
              Approx(-deviation(up(spread, 2), ToleranceWay::up, 0.8)));
    }
}

TEST_CASE("stack-ups are sought within limits, of a normal distribution three sigmas",
          "[judgement]")
{
    CHECK(stack_limit(up(Spread::normal, 2), ToleranceWay::up) == 6);
    CHECK(stack_limit(up(Spread::limits, 2, 4), ToleranceWay::up) == 2);
    CHECK(most_deviation(up(Spread::normal, 2), ToleranceWay::up) == 11);
    CHECK(most_deviation(up(Spread::uniform, 2), ToleranceWay::up) == 2);
}

TEST_CASE("only ways with a figure vary", "[judgement]")
{
    Tolerance both = up(Spread::normal, 1);
    both.by[static_cast<std::size_t>(ToleranceWay::turn)] = 0.1;
    const std::vector<BuildFactor> factors =
        build_factors({up(Spread::normal, 0), both, up(Spread::limits, 1)});
    REQUIRE(factors.size() == 3);
    CHECK(factors[0].tolerance == 1);
    CHECK(factors[0].way == ToleranceWay::up);
    CHECK(factors[1].way == ToleranceWay::turn);
    CHECK(factors[2].tolerance == 2);
}
