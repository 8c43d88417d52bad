#include "report/file_names.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("a plain name keeps letters and digits and joins the rest by hyphens", "[report]")
{
    CHECK(plain_name("far outboard") == "far-outboard");
    CHECK(plain_name("R48 6.5: 45/15, \"up\"") == "R48-6.5-45-15-up");
    CHECK(plain_name("../../etc") == "etc");
    CHECK(plain_name("-rf .hidden.") == "rf-.hidden");
    CHECK(plain_name("\xC3\xBC"
                     "ber") == "ber");
    CHECK(plain_name("line\nbreak") == "line-break");
}

TEST_CASE("a name of nothing plain, of a device, or too long becomes one that works", "[report]")
{
    CHECK(plain_name("") == "unnamed");
    CHECK(plain_name("?!") == "unnamed");
    CHECK(plain_name("Con") == "_Con");
    CHECK(plain_name("lpt1.2") == "_lpt1.2");
    CHECK(plain_name("com") == "com");
    CHECK(plain_name(std::string(300, 'a')).size() == 80);
}

TEST_CASE("names that would be one file are numbered", "[report]")
{
    CHECK(plain_names({"a b", "A/B", "a-b-2", "a:b", "c"}) ==
          std::vector<std::string>{"a-b", "A-B-2", "a-b-2-2", "a-b-3", "c"});
}
