#include "report/chart_words.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("units are set in the signs of print, and nothing else is changed", "[report]")
{
    CHECK(typeset("least: 784.2 mm2, 45 deg inboard, 15 deg down") ==
          "least: 784.2 mm\u00b2, 45\u00b0 inboard, 15\u00b0 down");
    CHECK(typeset("at 60 deg") == "at 60\u00b0");
    CHECK(typeset("a degree") == "a degree");
    CHECK(typeset_angle(degrees(-45)) == "\u221245\u00b0");
    CHECK(typeset_figure(-1000) == "\u22121000");
    CHECK(typeset_area(-1250) == "\u22121250 mm\u00b2");
}
