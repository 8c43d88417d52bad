#include "report/rule_json.h"

#include "specimens/made_table.h"

#include <catch2/catch.hpp>

using namespace glim;
using test::made_table;

TEST_CASE("a table's JSON has rows and rules", "[report]")
{
    const std::string json = text_of(table_json(made_table()));
    CHECK(json.find(R"("provenance": "second-hand")") != std::string::npos);
    CHECK(json.find(R"("below_mm": 2032.0)") != std::string::npos);
    CHECK(json.find(R"("parts": ["inboard"])") != std::string::npos);
}
