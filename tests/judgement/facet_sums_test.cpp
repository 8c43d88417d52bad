#include "judgement/facet_sums.h"

#include <catch2/catch.hpp>

#include <map>

using namespace glim;

TEST_CASE("sums far apart are kept and told by facet", "[judgement]")
{
    FacetSums<double> sums;
    sums[3'999'999] += 2;
    sums[7] += 1;
    sums[3'999'999] += 3;
    std::map<std::uint32_t, double> told;
    std::uint32_t last = 0;
    sums.visit([&](std::uint32_t facet, double sum) {
        CHECK(facet >= last);
        last = facet;
        if (sum != 0)
            told[facet] = sum;
    });
    CHECK(told == std::map<std::uint32_t, double>{{7, 1}, {3'999'999, 5}});
}
