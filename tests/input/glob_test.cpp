#include "input/glob.h"

#include <catch2/catch.hpp>

#include <string>

using namespace glim;

TEST_CASE("a pattern has to fit the whole text", "[input]")
{
    CHECK(fits_glob("lens", "lens"));
    CHECK_FALSE(fits_glob("lens", "lens2"));
    CHECK_FALSE(fits_glob("lens", "Lens"));
    CHECK_FALSE(fits_glob("ens", "lens"));
    CHECK(fits_glob("", ""));
    CHECK_FALSE(fits_glob("", "a"));
}

TEST_CASE("a star stands for any run and a question mark for one", "[input]")
{
    CHECK(fits_glob("*", ""));
    CHECK(fits_glob("l*s", "lens"));
    CHECK(fits_glob("*ab*", "aab"));
    CHECK(fits_glob("a*b*c", "aXbXbXc"));
    CHECK_FALSE(fits_glob("a*b*c", "aXbXb"));
    CHECK(fits_glob("l?ns", "lens"));
    CHECK_FALSE(fits_glob("?", ""));
}

// A backtracking search would need more steps than there are atoms.
TEST_CASE("a pattern of many stars is decided at once", "[input]")
{
    std::string pattern;
    for (int i = 0; i < 60; ++i)
        pattern += "*a";
    CHECK_FALSE(fits_glob(pattern + "b", std::string(2000, 'a')));
}
