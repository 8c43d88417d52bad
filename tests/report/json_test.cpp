#include "report/json.h"

#include <catch2/catch.hpp>

#include <limits>
#include <stdexcept>

using namespace glim;

TEST_CASE("objects spread over lines and arrays of plain values do not", "[report]")
{
    const Json json = Json::Object{
        {"name", "a \"b\"\n"},
        {"areas_mm2", Json::Array{1.5, 2.0, nullptr}},
        {"rows", Json::Array{Json::Object{{"exact", true}, {"count", 3}}}},
        {"none", Json::Object{}},
    };
    CHECK(text_of(json) == R"({
  "name": "a \"b\"\n",
  "areas_mm2": [1.5, 2.0, null],
  "rows": [
    {
      "exact": true,
      "count": 3
    }
  ],
  "none": {}
}
)");
}

TEST_CASE("a number that is not finite is refused rather than written as null", "[report]")
{
    CHECK_THROWS_AS(text_of(std::numeric_limits<double>::quiet_NaN()), std::logic_error);
    CHECK_THROWS_AS(text_of(Json::Array{std::numeric_limits<double>::infinity()}),
                    std::logic_error);
}

TEST_CASE("JSON numbers read back as the same double and zero has no sign", "[report]")
{
    CHECK(text_of(1.0 / 3) == "0.3333333333333333\n");
    CHECK(text_of(-0.0) == "0.0\n");
    CHECK(text_of(std::size_t{12}) == "12\n");
}

TEST_CASE("bytes that are no UTF-8 become the replacement character", "[report]")
{
    CHECK(text_of(std::string("a\xff")) == "\"a\xef\xbf\xbd\"\n");
}
