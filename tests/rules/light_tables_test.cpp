// The tables of light against themselves. Sums and products are arithmetic that a reader can
// repeat; the figures' own sources stand in the tables.

#include "judgement/conditions.h"
#include "rules/shipped_rules.h"

#include <catch2/catch.hpp>

#include <map>

using namespace glim;
using namespace glim::shapes;

namespace {

RuleTable shipped(const std::string& name)
{
    for (RuleTable& table : shipped_rules())
        if (table.name == name)
            return table;
    throw std::runtime_error("no table " + name);
}

LightTable points_of(const RuleTable& table, const std::string& row)
{
    INFO(row);
    REQUIRE(table.row(row) != nullptr);
    return std::get<LightTable>(table.row(row)->criterion);
}

double sum_of(const LightGroup& group)
{
    double sum = 0;
    for (const LightPoint& p : group.points)
        sum += in_candelas(p.least);
    return sum;
}

/// Candela by direction, every point of every group alone.
std::map<std::pair<double, double>, double> minima_of(const LightTable& table)
{
    std::map<std::pair<double, double>, double> minima;
    const auto add = [&](const std::vector<LightPoint>& points) {
        for (const LightPoint& p : points)
            minima[{in_degrees(p.toward.h), in_degrees(p.toward.v)}] = in_candelas(p.least);
    };
    add(table.points);
    for (const LightGroup& group : table.groups)
        add(group.points);
    return minima;
}

} // namespace

TEST_CASE("every group's total is the sum of its points", "[rules]")
{
    std::size_t groups = 0;
    for (const RuleTable& table : shipped_rules())
        for (const RuleRow& row : table.rows)
            if (const auto* points = std::get_if<LightTable>(&row.criterion))
                for (const LightGroup& group : points->groups) {
                    INFO(table.name << ": " << row.id << ", group " << group.name);
                    ++groups;
                    CHECK(sum_of(group) == Approx(in_candelas(group.total)).epsilon(1e-12));
                }
    CHECK(groups == 10);
}

TEST_CASE("the front turn signal's groups need 130, 250 and 950 cd, and their multiples", "[rules]")
{
    const RuleTable us = shipped("fmvss-108");
    const LightTable points = points_of(us, "front-turn-light");
    std::vector<double> totals;
    for (const LightGroup& group : points.groups)
        totals.push_back(in_candelas(group.total));
    CHECK(totals == std::vector<double>{130, 250, 950, 250, 130});
    CHECK(points.floor == 0.6);
    const auto& gap = std::get<GapToLamp>(us.row(points.multiplied_by)->criterion);
    std::vector<std::string> multipliers;
    for (const GapStep& step : gap.steps)
        multipliers.push_back(step.follows);
    CHECK(multipliers == std::vector<std::string>{"1", "1.5", "2", "2.5"});
    // The regulation's own columns: 195, 375, 1425 at 1.5; 325, 625, 2375 at 2.5.
    CHECK(130 * 1.5 == 195);
    CHECK(in_candelas(points.groups[2].total * 1.5) == 1425);
    CHECK(in_candelas(points.groups[1].total * 2.5) == 625);
}

TEST_CASE("groups of light are mirror images of each other", "[rules]")
{
    const RuleTable us = shipped("fmvss-108");
    for (const std::string row : {"front-turn-light", "parking-light"}) {
        const auto minima = minima_of(points_of(us, row));
        CHECK(minima.size() == 19);
        for (const auto& [toward, cd] : minima) {
            INFO(row << " H " << toward.first << " V " << toward.second);
            REQUIRE(minima.contains({0 - toward.first, toward.second}));
            CHECK(minima.at({0 - toward.first, toward.second}) == cd);
        }
    }
}

TEST_CASE("the standard distribution at 4 cd is the parking lamp's table", "[rules]")
{
    const auto parking = minima_of(points_of(shipped("fmvss-108"), "parking-light"));
    const auto position = minima_of(points_of(shipped("un-r148"), "front-position-grid"));
    CHECK(parking.size() == position.size());
    for (const auto& [toward, cd] : position) {
        INFO("H " << toward.first << " V " << toward.second);
        REQUIRE(parking.contains(toward));
        CHECK(parking.at(toward) == Approx(cd).epsilon(1e-12));
    }
}

TEST_CASE("low lamps are asked for nothing below 5 down", "[rules]")
{
    const RuleTable un = shipped("un-r148");
    for (const RuleRow& row : un.rows) {
        if (!std::holds_alternative<LightTable>(row.criterion))
            continue;
        INFO(row.id);
        REQUIRE(row.relaxations.size() == 1);
        const Field& low = row.relaxations.front().field;
        CHECK(low.rectangles.size() + 2 == row.field.rectangles.size());
        CHECK(low.holds({degrees(0), degrees(-5)}));
        CHECK(!low.holds({degrees(5), degrees(-10)}));
        CHECK(low.holds({degrees(5), degrees(10)}));
    }
}

TEST_CASE("every proof that a row names is there, for every function of the row", "[rules]")
{
    std::size_t proofs = 0;
    for (const RuleTable& table : shipped_rules())
        for (const RuleRow& row : table.rows) {
            if (!row.proof)
                continue;
            INFO(table.name << ": " << row.id);
            ++proofs;
            const RuleTable light = shipped(row.proof->table);
            const std::vector<const RuleRow*> rows = rows_under(light, row.proof->rule);
            REQUIRE(!rows.empty());
            for (const RuleRow* each : rows) {
                CHECK(asks_light(each->criterion));
                CHECK(each->axis == row.axis);
                for (const LampFunction function : each->functions)
                    CHECK(speaks_of(row, function));
            }
            for (const LampFunction function : row.functions)
                CHECK(std::any_of(rows.begin(), rows.end(),
                                  [&](const RuleRow* each) { return speaks_of(*each, function); }));
        }
    CHECK(proofs == 16);
}

TEST_CASE("what is asked anywhere in a field is less than any point of the grid of that lamp",
          "[rules]")
{
    const RuleTable un = shipped("un-r148");
    const auto anywhere = [&](const std::string& row) {
        REQUIRE(un.row(row) != nullptr);
        return in_candelas(std::get<LeastIntensity>(un.row(row)->criterion).least);
    };
    for (const auto& [grid, field] : std::vector<std::pair<std::string, std::string>>{
             {"front-indicator-1-grid", "front-indicator-everywhere"},
             {"rear-indicator-2b-grid", "rear-indicator-everywhere"},
             {"front-position-grid", "front-position-everywhere"},
             {"rear-position-grid", "rear-position-everywhere"},
             {"stop-grid", "stop-everywhere"},
             {"daytime-running-grid", "daytime-running-everywhere"}})
        for (const auto& [toward, cd] : minima_of(points_of(un, grid))) {
            INFO(grid << " H " << toward.first << " V " << toward.second);
            CHECK(anywhere(field) < cd);
        }
    // At night less than by day, and in the reduced field the same as in the whole.
    CHECK(anywhere("stop-s2-night-everywhere") < anywhere("stop-everywhere"));
    CHECK(anywhere("rear-indicator-2b-night-everywhere") < anywhere("rear-indicator-everywhere"));
    for (const std::string lamp :
         {"front-indicator", "rear-indicator", "front-position", "rear-position"})
        CHECK(anywhere(lamp + "-everywhere-reduced") == anywhere(lamp + "-everywhere"));
}
