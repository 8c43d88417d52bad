#include "geometry/likely_unit.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

Box box(double x, double y, double z)
{
    Box result;
    result.add({-x / 2, 0, 100});
    result.add({x / 2, y, 100 + z});
    return result;
}

} // namespace

TEST_CASE("a front of 1900 is in millimetres, one of 1.9 in metres", "[geometry]")
{
    CHECK(likely_unit_words(box(900, 1900, 800)) == "likely mm (0.9 x 1.9 x 0.8 m)");
    CHECK(likely_unit_words(box(0.9, 1.9, 0.8)) ==
          "likely m (0.9 x 1.9 x 0.8 m) or foot (0.3 x 0.6 x 0.2 m)");
}

TEST_CASE("several units may be likely, the likeliest first", "[geometry]")
{
    CHECK(likely_unit_words(box(90, 190, 80)) ==
          "likely cm (0.9 x 1.9 x 0.8 m) or inch (2.3 x 4.8 x 2.0 m)");
    CHECK(likely_unit_words(box(75, 35, 30)).starts_with("likely inch (1.9 x 0.9 x 0.8 m)"));
}

TEST_CASE("both ends of what is likely belong to it", "[geometry]")
{
    REQUIRE(likely_units(box(6000, 1, 1)).size() == 1);
    CHECK(likely_units(box(6000, 1, 1))[0].word == "mm");
    CHECK(likely_units(box(6001, 1, 1)).empty());
    CHECK(likely_units(box(0.3, 0, 0)).front().word == "m");
    CHECK(likely_units(box(0.2999, 0, 0)).empty());
}

TEST_CASE("what is no vehicle in any unit has no likely unit", "[geometry]")
{
    CHECK(likely_unit_words(box(45000, 10, 10)) ==
          "no likely unit: the longest side is 4.5e+04 in the file's own");
    CHECK(likely_unit_words(box(0, 0, 0)) ==
          "no likely unit: the longest side is 0 in the file's own");
    CHECK(likely_units(Box{}).empty());
}
