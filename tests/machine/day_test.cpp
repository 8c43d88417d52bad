#include "machine/day.h"

#include <catch2/catch.hpp>

using namespace glim;

// As `date -u -d @SECONDS +%F` of GNU coreutils has them.
TEST_CASE("seconds since 1970 become a day", "[machine]")
{
    CHECK(day_of_seconds(0) == "1970-01-01");
    CHECK(day_of_seconds(86399) == "1970-01-01");
    CHECK(day_of_seconds(951782400) == "2000-02-29");
    CHECK(day_of_seconds(1767312245) == "2026-01-02");
    CHECK(day_of_seconds(253402300799) == "9999-12-31");
}

TEST_CASE("what no calendar of four digits holds is no day", "[machine]")
{
    CHECK_FALSE(day_of_seconds(-1));
    CHECK_FALSE(day_of_seconds(253402300800));
}

TEST_CASE("a day has to exist and to be written in full", "[machine]")
{
    CHECK(is_day("2024-02-29"));
    CHECK_FALSE(is_day("2026-02-29"));
    CHECK_FALSE(is_day("2026-13-01"));
    CHECK_FALSE(is_day("2026-1-1"));
    CHECK_FALSE(is_day("2026/01/01"));
    CHECK_FALSE(is_day("2026-01-01T00"));
    CHECK_FALSE(is_day("-026-01-01"));
    CHECK_FALSE(is_day("2026-0a-01"));
    CHECK_FALSE(is_day(""));
}

TEST_CASE("today is a day", "[machine]") { CHECK(is_day(today())); }
