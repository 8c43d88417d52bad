#include "drawing/scale_bar.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("a scale bar has the longest round length that fits", "[drawing]")
{
    const auto round_mm = [](double mm) { return in_mm(round_length(millimetres(mm))); };
    CHECK(round_mm(50) == 50);
    CHECK(round_mm(49.9) == 20);
    CHECK(round_mm(99.9) == 50);
    CHECK(round_mm(1234) == 1000);
    CHECK(round_mm(20.0000001 - 1e-7) == 20);
    CHECK(round_mm(0.7) == Approx(0.5));
    CHECK(round_mm(0.012) == Approx(0.01));
}
