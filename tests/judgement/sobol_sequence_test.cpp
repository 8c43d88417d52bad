#include "judgement/sobol_sequence.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <set>

using namespace glim;

TEST_CASE("every coordinate fills its line evenly", "[judgement]")
{
    // Of 2^m points of a digital sequence each interval of 2^-m has one, whatever the shift.
    const SobolSequence sequence(24, 5);
    for (std::size_t d = 0; d < 24; ++d) {
        std::set<int> intervals;
        for (std::uint32_t i = 0; i < 256; ++i)
            intervals.insert(static_cast<int>(sequence.point(3, i)[d] * 256));
        INFO(d);
        CHECK(intervals.size() == 256);
    }
}

TEST_CASE("the first two coordinates fill the square evenly", "[judgement]")
{
    // A (0, 2)-sequence: of 2^m points one in each box of 2^-a by 2^-(m - a).
    const SobolSequence sequence(2, 1);
    for (const int across : {1, 4, 16, 64}) {
        std::set<int> boxes;
        for (std::uint32_t i = 0; i < 64; ++i) {
            const std::vector<double> p = sequence.point(0, i);
            boxes.insert(static_cast<int>(p[0] * across) * 64 +
                         static_cast<int>(p[1] * 64 / across));
        }
        CHECK(boxes.size() == 64);
    }
}

TEST_CASE("an integral in many dimensions is closer than chance would bring it", "[judgement]")
{
    // The mean of a product of (1 + (u - 1/2) / 2) is 1; by chance alone 1024 points are off by
    // sqrt((1 + 1/48)^12 - 1) / 32 = 0.0167 on the mean (12 dimensions).
    const SobolSequence sequence(12, 9);
    double squared = 0;
    for (std::uint32_t shift = 0; shift < 16; ++shift) {
        double sum = 0;
        for (std::uint32_t i = 0; i < 1024; ++i) {
            double product = 1;
            for (const double u : sequence.point(shift, i))
                product *= 1 + (u - 0.5) / 2;
            sum += product;
        }
        squared += std::pow(sum / 1024 - 1, 2);
    }
    CHECK(std::sqrt(squared / 16) < 0.0167 / 5);
}

TEST_CASE("points hang on the seed and the shift alone", "[judgement]")
{
    const SobolSequence a(3, 1), again(3, 1), other(3, 2);
    CHECK(a.point(0, 7) == again.point(0, 7));
    CHECK(a.point(0, 7) != a.point(1, 7));
    CHECK(a.point(0, 7) != other.point(0, 7));
    for (const double u : a.point(2, 0)) {
        CHECK(u > 0);
        CHECK(u < 1);
    }
}
