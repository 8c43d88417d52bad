#include "judgement/build_statistics.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <numeric>

using namespace glim;

TEST_CASE("a share has Wilson's interval", "[judgement]")
{
    // Worked example: R. G. Newcombe, Statistics in Medicine 17, 1998, table I, 81 of 263.
    const ShareOfBuilds share = share_of(81, 263);
    CHECK(share.share == Approx(0.3080).margin(5e-5));
    CHECK(share.low == Approx(0.2553).margin(5e-5));
    CHECK(share.high == Approx(0.3662).margin(5e-5));
    CHECK(share_of(0, 100).low == 0);
    CHECK(share_of(100, 100).high == 1);
    CHECK(share_of(100, 100).low < 1);
}

TEST_CASE("a spread is told by mean, deviation, tails and bins", "[judgement]")
{
    std::vector<double> figures(1001);
    std::iota(figures.begin(), figures.end(), 0.0);
    const FigureSpread spread = spread_of(figures);
    CHECK(spread.mean == Approx(500));
    // Of 0 ... n - 1: n (n + 1) / 12.
    CHECK(spread.standard_deviation == Approx(std::sqrt(1001.0 * 1002 / 12)));
    CHECK(spread.one_percent == Approx(10));
    CHECK(spread.median == Approx(500));
    CHECK(spread.most == 1000);
    std::size_t counted = 0;
    for (const std::size_t count : spread.histogram.counts)
        counted += count;
    CHECK(counted == 1001);
    CHECK(spread.histogram.most() == Approx(1000));
    CHECK(spread_of({5, 5, 5}).histogram.counts == std::vector<std::size_t>{3});
}

TEST_CASE("an estimate of several has Student's interval", "[judgement]")
{
    // Mean 2, deviation 1, three of them: 2 +- 4.303 / sqrt 3.
    const Estimate estimate = estimate_from(std::vector<double>{1, 2, 3});
    CHECK(estimate.value == Approx(2));
    CHECK(estimate.high == Approx(2 + 4.303 / std::sqrt(3)));
}

TEST_CASE("what does not vary has no shares", "[judgement]")
{
    const std::vector<double> same(32, 7);
    CHECK_FALSE(variance_share({same, same, same}, 2));
}
