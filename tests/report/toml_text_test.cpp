#include "report/toml_text.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("a name becomes TOML text whatever it holds", "[report]")
{
    CHECK(toml_text("nose") == "\"nose\"");
    CHECK(toml_text("a \"b\" \\c") == "\"a \\\"b\\\" \\\\c\"");
    CHECK(toml_text("a\x01") == "\"a\\u0001\"");
}

TEST_CASE("points and lists become TOML values", "[report]")
{
    CHECK(toml_point({1, 0.1, -3}) == "[1, 0.1, -3]");
    CHECK(toml_list({}) == "[]");
    CHECK(toml_list({"a", "b \"c\""}) == "[\"a\", \"b \\\"c\\\"\"]");
}
