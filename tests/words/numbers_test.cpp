#include "words/numbers.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("rounding drops trailing zeros, the point with them, and the sign of zero", "[words]")
{
    CHECK(rounded(1250, 3) == "1250");
    CHECK(rounded(700.25, 3) == "700.25");
    CHECK(rounded(0.0004, 3) == "0");
    CHECK(rounded(-0.0004, 3) == "0");
    CHECK(rounded(-0.0, 0) == "0");
    CHECK(rounded(-0.0006, 3) == "-0.001");
    CHECK(rounded(100, 0) == "100");
}

TEST_CASE("a fixed number of decimals stays", "[words]")
{
    CHECK(with_decimals(2, 2) == "2.00");
    CHECK(with_decimals(-0.001, 2) == "0.00");
}

TEST_CASE("the largest double can be written", "[words]")
{
    CHECK(rounded(1.7976931348623157e308, 3).size() == 309);
}

TEST_CASE("the shortest form reads back as the same number", "[words]")
{
    CHECK(shortest(0.1) == "0.1");
    CHECK(shortest(1.0 / 3) == "0.3333333333333333");
    CHECK(shortest(5) == "5");
    CHECK(shortest(-0.0) == "0");
}

TEST_CASE("people get fewer digits, but a small area does not become nothing", "[words]")
{
    CHECK(area_words(square_millimetres(712.34)) == "712.3 mm2");
    CHECK(area_words(square_millimetres(0.0124)) == "0.012 mm2");
    CHECK(angle_words(degrees(41.504)) == "41.5 deg");
}

TEST_CASE("nearly all is not all, and nearly nothing is not nothing", "[words]")
{
    CHECK(share_words(1, 1) == "100 %");
    CHECK(share_words(0, 1) == "0 %");
    CHECK(share_words(9999, 10000) == "over 99.9 %");
    CHECK(share_words(1, 10000) == "under 0.1 %");
    CHECK(share_words(381, 1000) == "38.1 %");
}
