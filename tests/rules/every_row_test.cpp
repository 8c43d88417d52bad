#include "judgement/check_study.h"
#include "rules/corner_for_row.h"
#include "rules/shipped_rules.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

struct Case {
    RuleTable table;
    RuleRow row;
};

std::vector<Case> every_shipped_row()
{
    std::vector<Case> cases;
    for (const RuleTable& table : shipped_rules())
        for (const RuleRow& row : table.rows)
            cases.push_back({table, row});
    return cases;
}

Outcome answer_to(const Study& study) { return check_study(study).checks.front().outcome; }

/// A gap that gives a multiplier fails no lamp: it tells what follows.
bool can_fail(const RuleRow& row)
{
    const auto* gap = std::get_if<GapToLamp>(&row.criterion);
    return !gap || gap->is_category;
}

} // namespace

TEST_CASE("every row of every shipped table is met by a lamp made for it", "[rules]")
{
    for (const Case& c : every_shipped_row()) {
        INFO(c.table.name << ": " << c.row.id);
        CHECK(answer_to(corner_that_meets(c.table, c.row)) == Outcome::met);
    }
}

TEST_CASE("every row of light has no answer without a photometric file", "[rules]")
{
    for (const Case& c : every_shipped_row()) {
        if (!asks_light(c.row.criterion))
            continue;
        INFO(c.table.name << ": " << c.row.id);
        Study study = corner_that_meets(c.table, c.row);
        study.lights.clear();
        CHECK(answer_to(study) == Outcome::no_photometric_data);
    }
}

TEST_CASE("every row of every shipped table fails when just that is spoilt", "[rules]")
{
    for (const Case& c : every_shipped_row()) {
        if (!can_fail(c.row))
            continue;
        INFO(c.table.name << ": " << c.row.id);
        const bool of_obstacles = std::holds_alternative<NoObstacle>(c.row.criterion);
        CHECK(answer_to(corner_that_fails(c.table, c.row)) ==
              (of_obstacles ? Outcome::proof_due : Outcome::not_met));
    }
}
