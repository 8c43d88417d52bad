#include "drawing/chart_scale.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("a scale runs evenly from end to end", "[drawing]")
{
    const ChartScale scale{.least = -10, .most = 30};
    CHECK(scale.share_of(-10) == 0);
    CHECK(scale.share_of(20) == 0.75);
    CHECK(scale.figure_at(0.75) == 20);
    CHECK(scale.ticks(5) == std::vector<double>{-10, 0, 10, 20, 30});
}

TEST_CASE("a scale in decades gives each the same room", "[drawing]")
{
    const ChartScale scale{.least = 0.1, .most = 100, .logarithmic = true};
    CHECK(scale.share_of(0.1) == Approx(0).margin(1e-12));
    CHECK(scale.share_of(1) == Approx(1.0 / 3));
    CHECK(scale.share_of(10) == Approx(2.0 / 3));
    CHECK(scale.share_of(1000) == Approx(4.0 / 3));
    CHECK(scale.share_of(0) == 0);
    CHECK(scale.figure_at(2.0 / 3) == Approx(10));
    const auto near = [](const std::vector<double>& all, std::vector<double> wanted) {
        REQUIRE(all.size() == wanted.size());
        for (std::size_t i = 0; i < all.size(); ++i)
            CHECK(all[i] == Approx(wanted[i]));
    };
    near(scale.ticks(4), {0.1, 1, 10, 100});
    near(scale.ticks(10), {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100});
}

TEST_CASE("whole decades hold what they are made for", "[drawing]")
{
    const ChartScale scale = whole_decades(0.3, 212);
    CHECK(scale.least == Approx(0.1));
    CHECK(scale.most == Approx(1000));
    CHECK(scale.logarithmic);
    // What is a decade's end itself needs no further one, and one decade there is at least.
    CHECK(whole_decades(0.1, 100).most == Approx(100));
    CHECK(whole_decades(1, 1).most == Approx(10));
}
