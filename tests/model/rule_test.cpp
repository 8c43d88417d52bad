#include "model/rule.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("the rows under a rule come once each, in the order of the rule's text", "[model]")
{
    RuleTable table;
    for (const std::string id : {"a", "b", "c"}) {
        table.rows.emplace_back();
        table.rows.back().id = id;
    }
    table.rules = {{"inner", "", Combine::any_of, {"c", "a"}},
                   {"outer", "", Combine::all_of, {"b", "inner", "c"}}};
    std::string order;
    for (const RuleRow* row : rows_under(table, "outer"))
        order += row->id;
    CHECK(order == "bca");
    CHECK(rows_under(table, "a").size() == 1);
    CHECK(rows_under(table, "nothing").empty());
}

TEST_CASE("a condition holds from its least on, and below its most", "[model]")
{
    const Condition condition{Measured::overall_width, millimetres(10), millimetres(20)};
    CHECK_FALSE(condition.holds(millimetres(9.9)));
    CHECK(condition.holds(millimetres(10)));
    CHECK_FALSE(condition.holds(millimetres(20)));
}
