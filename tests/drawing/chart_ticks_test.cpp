#include "drawing/chart_ticks.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

std::vector<double> angles(double least, double most, int most_ticks)
{
    std::vector<double> all;
    for (const Angle a : angle_ticks(degrees(least), degrees(most), most_ticks))
        all.push_back(in_degrees(a));
    return all;
}

} // namespace

TEST_CASE("areas are ticked at round figures, no more of them than asked", "[drawing]")
{
    CHECK(area_ticks_mm2(0, 2400, 7) == std::vector<double>{0, 500, 1000, 1500, 2000});
    CHECK(area_ticks_mm2(-1250, 1250, 4) == std::vector<double>{-1000, 0, 1000});
    CHECK(area_ticks_mm2(7, 7, 5) == std::vector<double>{7});
    for (const double most : {0.003, 1.0, 17.0, 99999.0})
        for (const int ticks : {2, 5, 12}) {
            const std::size_t count = area_ticks_mm2(0, most, ticks).size();
            CHECK(count >= 1);
            CHECK(count <= static_cast<std::size_t>(ticks));
        }
}

TEST_CASE("angles are ticked as rules count them, at both ends if that costs little", "[drawing]")
{
    CHECK(angles(-45, 45, 11) == std::vector<double>{-45, -30, -15, 0, 15, 30, 45});
    CHECK(angles(-15, 15, 3) == std::vector<double>{-15, 0, 15});
    CHECK(angles(-45, 80, 11) == std::vector<double>{-45, -30, -15, 0, 15, 30, 45, 60, 75});
    CHECK(angles(-180, 180, 5) == std::vector<double>{-180, -90, 0, 90, 180});
    CHECK(angles(5, 60, 8).front() >= 5);
    // Tenths are multiples, not sums.
    CHECK(angles(-0.5, 0.5, 11).back() == 0.5);
}
