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
    CHECK(likely_unit_words(box(900, 1900, 800)) == "likely mm (900 x 1900 x 800 mm)");
    CHECK(likely_unit_words(box(0.9, 1.9, 0.8)) ==
          "likely m (900 x 1900 x 800 mm) or foot (274 x 579 x 244 mm)");
}

TEST_CASE("several units may be likely, the likeliest first", "[geometry]")
{
    CHECK(likely_unit_words(box(90, 190, 80)) ==
          "likely cm (900 x 1900 x 800 mm) or inch (2286 x 4826 x 2032 mm)");
    CHECK(likely_unit_words(box(75, 35, 30)).starts_with("likely inch (1905 x 889 x 762 mm)"));
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
