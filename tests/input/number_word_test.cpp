#include "input/number_word.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("a coordinate is any finite decimal number, with either sign", "[input]")
{
    CHECK(coordinate_in("0") == 0.0);
    CHECK(coordinate_in("-12.50") == -12.5);
    CHECK(coordinate_in("+3") == 3.0);
    CHECK(coordinate_in(".5") == 0.5);
    CHECK(coordinate_in("5.") == 5.0);
    CHECK(coordinate_in("1.25e1") == 12.5);
    CHECK(coordinate_in("1E-3") == 0.001);
    CHECK(coordinate_in("0.1") == 0.1);
    CHECK(coordinate_in("1e9") == 1e9);
    CHECK(coordinate_in("-1000000000") == -1e9);
}

TEST_CASE("what is no number to the last letter is none at all", "[input]")
{
    for (const char* word :
         {"",          "+",    "-",     ".",     "e5",     "1e",      "1.2.3", "12mm",
          "0x10",      "--1",  "+-1",   "++1",   "0,5",    "1 2",     "nan",   "inf",
          "-infinity", "1e10", "-1e39", "1e999", "1e-999", "\xd9\xa1"}) {
        INFO(word);
        CHECK_FALSE(coordinate_in(word));
    }
}

TEST_CASE("the trouble with a word names what it is", "[input]")
{
    CHECK(number_trouble("0,5").what == "`0,5` has a comma in the middle of a number");
    CHECK(number_trouble("-1,25e3").remedy == "write a point before the decimals");
    CHECK(number_trouble("1,234,567").what == "`1,234,567` is not a number");
    CHECK(number_trouble("abc").what == "`abc` is not a number");
    CHECK(number_trouble("-inf").what == "`-inf` is not a finite number");
    CHECK(number_trouble("2e9").what == "`2e9` is too large to be a coordinate");
    CHECK(number_trouble("1e999").what == "`1e999` is too large or too small to be a coordinate");
}

TEST_CASE("significant digits are counted as written", "[input]")
{
    CHECK(significant_digits("0.001200") == 4);
    CHECK(significant_digits("-123.456e-12") == 6);
    CHECK(significant_digits("100") == 3);
    CHECK(significant_digits("0.0") == 0);
}
