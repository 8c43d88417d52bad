#include "words/money_words.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("thousands are parted, and no more than cents are told", "[words]")
{
    CHECK(grouped(0) == "0");
    CHECK(grouped(999) == "999");
    CHECK(grouped(1000) == "1,000");
    CHECK(grouped(1234567.891) == "1,234,567.89");
    CHECK(grouped(-12345) == "-12,345");
    CHECK(grouped(-123) == "-123");
}

TEST_CASE("a range is told with its ends, one number alone", "[words]")
{
    CHECK(money_words(Range::of(21.5), "EUR") == "21.5 EUR");
    CHECK(money_words({1000, 2000, 3000}, "EUR") == "2,000 EUR (1,000 to 3,000)");
    CHECK(range_words({1, 2, 3}) == "2 (1 to 3)");
}
