#include "rules/shipped_rules.h"

#include <catch2/catch.hpp>

#include <set>

using namespace glim;
using namespace glim::shapes;

namespace {

const RuleTable& shipped(const std::vector<RuleTable>& all, const std::string& name)
{
    for (const RuleTable& table : all)
        if (table.name == name)
            return table;
    FAIL("no table " << name);
    return all.front();
}

double field_sr(const RuleTable& table, const std::string& row)
{
    INFO(row);
    REQUIRE(table.row(row) != nullptr);
    return in_steradians(solid_angle(table.row(row)->field));
}

} // namespace

TEST_CASE("every shipped row says where it stands and how well it is known", "[rules]")
{
    for (const RuleTable& table : shipped_rules()) {
        if (table.name == "own-example")
            continue;
        for (const RuleRow& row : table.rows) {
            INFO(table.name << ": " << row.id);
            CHECK(!row.citation.clause.empty());
            CHECK(!row.functions.empty());
            const bool says_memory = row.citation.source.find("memory") != std::string::npos;
            CHECK((row.citation.provenance != Provenance::memory || says_memory));
            for (const Relaxation& r : row.relaxations)
                CHECK(!r.citation.clause.empty());
        }
    }
}

TEST_CASE("every relaxed field lies within the field that it relaxes", "[rules]")
{
    for (const RuleTable& table : shipped_rules())
        for (const RuleRow& row : table.rows)
            for (const Relaxation& relaxed : row.relaxations) {
                INFO(table.name << ": " << row.id);
                if (std::holds_alternative<LightTable>(row.criterion))
                    CHECK(relaxed.field.rectangles.size() < row.field.rectangles.size());
                else
                    CHECK(solid_angle(relaxed.field) < solid_angle(row.field));
                for (const FieldRectangle& r : relaxed.field.rectangles) {
                    CHECK(row.field.holds({r.h_least, r.v_least}));
                    CHECK(row.field.holds({r.h_most, r.v_most}));
                }
            }
}

TEST_CASE("every rule but the questions is a part of another, and every row can be asked",
          "[rules]")
{
    for (const RuleTable& table : shipped_rules())
        for (const Rule& rule : table.rules)
            for (const std::string& part : rule.parts) {
                INFO(table.name << ": " << rule.id);
                CHECK((table.row(part) != nullptr || table.rule(part) != nullptr));
            }
}

TEST_CASE("the fields of geometric visibility have the solid angles of their closed form",
          "[rules]")
{
    // (H2 - H1)(sin V2 - sin V1), computed by hand from the angles of the regulation.
    const std::vector<RuleTable> all = shipped_rules();
    const RuleTable& un = shipped(all, "un-r48");
    CHECK(field_sr(un, "front-indicator-field") == Approx(1.129311).margin(1e-6));
    CHECK(field_sr(un, "rear-position-field") == Approx(1.129311).margin(1e-6));
    CHECK(field_sr(un, "stop-field") == Approx(0.813104).margin(1e-6));
    CHECK(field_sr(un, "daytime-running-field") == Approx(0.242459).margin(1e-6));
    CHECK(field_sr(un, "side-marker-field") == Approx(0.545532).margin(1e-6));
    // Five down and 20 inboard below the horizontal, for a low lamp.
    const RuleRow& front = *un.row("front-indicator-field");
    CHECK(in_steradians(solid_angle(front.relaxations.front().field)) ==
          Approx(0.716771).margin(1e-6));
    CHECK(front.relaxations.front().field.holds({degrees(-45), degrees(0)}));
    CHECK(!front.relaxations.front().field.holds({degrees(-45), degrees(-1)}));
    CHECK(front.relaxations.front().field.holds({degrees(-20), degrees(-5)}));
}

TEST_CASE("functions of front, side and rear lamps all have their angles in the UN table",
          "[rules]")
{
    const std::vector<RuleTable> all = shipped_rules();
    std::set<LampFunction> asked;
    for (const RuleRow& row : shipped(all, "un-r48").rows)
        if (std::holds_alternative<NoObstacle>(row.criterion))
            asked.insert(row.functions.begin(), row.functions.end());
    for (const FunctionWord& word : function_words)
        if (word.function != LampFunction::main_beam) {
            INFO(word.key);
            CHECK(asked.contains(word.function));
        }
}
