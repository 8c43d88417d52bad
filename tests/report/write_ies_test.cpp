#include "report/write_ies.h"

#include "model/photometric_fields.h"

#include <catch2/catch.hpp>

#include <sstream>

using namespace glim;
using namespace glim::test;

namespace {

IntensityGrid small_grid()
{
    return {Goniometer::a,
            {degrees(-45), degrees(80)},
            {degrees(-15), degrees(-0.0), degrees(15)},
            {candelas(0.1), candelas(2), candelas(1.0 / 3), candelas(0), candelas(5e-7),
             candelas(1250)}};
}

} // namespace

TEST_CASE("a type A grid is written as LM-63-2002", "[report]")
{
    CHECK(ies_text(small_grid(), {millimetres(50), millimetres(-100), {}},
                   {{"test", "made up"}, {"", "two\nlines, [x]"}}, 21.5) ==
          "IESNA:LM-63-2002\n"
          "[TEST] made up\n"
          "[OTHER] two lines,  x \n"
          "TILT=NONE\n"
          "1 -1 1 3 2 3 2 0.05 -0.1 0\n"
          "1 1 21.5\n"
          "-15 0 15\n"
          "-45 80\n"
          "0.1 2 0.3333333333333333\n"
          "0 5e-07 1250\n");
}

TEST_CASE("no line of a written file is longer than others read", "[report]")
{
    const IntensityGrid grid = sampled(Goniometer::a, angles(-90, 90, 2.5), angles(-90, 90, 2.5),
                                       skew_field, parts_of_a_and_b);
    std::istringstream lines(ies_text(grid, {}, {}));
    std::size_t longest = 0;
    for (std::string line; std::getline(lines, line);)
        longest = std::max(longest, line.size());
    CHECK(longest <= 78);
    CHECK(longest > 60);
}
