#include "remedy/ways_of_rule.h"

#include "judgement/made_rules.h"

#include <catch2/catch.hpp>

#include <map>

using namespace glim;

namespace {

RuleTable table()
{
    RuleTable table;
    for (const char* id : {"clear", "area", "marker", "axis"})
        table.rows.push_back(shapes::made_row(id, NoObstacle{}, -45, 45, -15, 15));
    table.rules = {
        {.id = "reduced", .title = "", .combine = Combine::all_of, .parts = {"area", "marker"}},
        {.id = "either", .title = "", .combine = Combine::any_of, .parts = {"clear", "reduced"}},
        {.id = "all", .title = "", .combine = Combine::all_of, .parts = {"either", "axis"}}};
    return table;
}

RowKept kept_as(std::map<std::string, bool> rows)
{
    return [rows](const std::string& id) {
        const auto row = rows.find(id);
        return row == rows.end() ? std::nullopt : std::optional(row->second);
    };
}

} // namespace

TEST_CASE("of several ways that are enough each, the rows of a kept one count alone", "[remedy]")
{
    const auto count = [](bool clear, bool area) {
        return rows_that_count(table(), "all",
                               kept_as({{"clear", clear}, {"area", area}, {"axis", false}}));
    };
    CHECK(count(false, true) == std::set<std::string>{"area", "axis", "marker"});
    CHECK(count(true, false) == std::set<std::string>{"axis", "clear"});
    CHECK(count(false, false) == std::set<std::string>{"area", "axis", "clear", "marker"});
}

TEST_CASE("a way that asks for no space makes up for none", "[remedy]")
{
    const RowKept kept = kept_as({{"clear", false}});
    CHECK(rows_that_count(table(), "either", kept).count("clear") == 1);
    CHECK(ways_of_rule(table(), "all", kept).empty());
}

TEST_CASE("ways are told by their rows that ask for a space", "[remedy]")
{
    const std::vector<WaysOfRule> ways =
        ways_of_rule(table(), "all", kept_as({{"clear", true}, {"area", false}, {"axis", true}}));
    CHECK(ways == std::vector<WaysOfRule>{{{"clear"}, {"area"}}});
}
