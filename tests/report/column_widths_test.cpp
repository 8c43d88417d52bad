#include "report/column_widths.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("columns fill the width, and what is left over goes by what they take", "[report]")
{
    CHECK(column_widths({{10, 20}, {10, 60}}, 160) == std::vector<double>{40, 120});
}

TEST_CASE("where not all fits, nobody gets less than its longest word", "[report]")
{
    // 40 are taken by words; the other 60 go by what is missing, 0 and 160 of 160.
    CHECK(column_widths({{20, 20}, {20, 180}}, 100) == std::vector<double>{20, 80});
}

TEST_CASE("where not even the words fit, all shrink alike", "[report]")
{
    CHECK(column_widths({{100, 100}, {300, 500}}, 200) == std::vector<double>{50, 150});
}
