#include "words/chart_words.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("units are set in the signs of print, and nothing else is changed", "[words]")
{
    CHECK(typeset("least: 784.2 mm2, 45 deg inboard, 15 deg down") ==
          "least: 784.2 mm\u00b2, 45\u00b0 inboard, 15\u00b0 down");
    CHECK(typeset("at 60 deg") == "at 60\u00b0");
    CHECK(typeset("a degree") == "a degree");
    CHECK(typeset("(12 deg)") == "(12\u00b0)");
    CHECK(typeset("up to 5 deg. Then 7 mm2.") == "up to 5\u00b0. Then 7 mm\u00b2.");
    for (const char* name : {"lamp mm2", "lamp mm2 deg.toml", "5 deg.toml", "5 mm2x", "5 degrees"})
        CHECK(typeset(name) == name);
    CHECK(typeset_angle(degrees(-45)) == "\u221245\u00b0");
    CHECK(typeset_figure(-1000) == "\u22121000");
    CHECK(typeset_area(-1250) == "\u22121250 mm\u00b2");
}

TEST_CASE("a name keeps its own signs wherever it is told", "[words]")
{
    const std::vector<std::string> names{"lamp 5 deg", "lamp 5 deg, left"};
    CHECK(typeset("12 deg from lamp 5 deg, left: 8 mm2", names) ==
          "12\u00b0 from lamp 5 deg, left: 8 mm\u00b2");
    CHECK(typeset("lamp 5 deg", names) == "lamp 5 deg");
    CHECK(typeset("lamp 15 deg", names) == "lamp 15\u00b0");
}
