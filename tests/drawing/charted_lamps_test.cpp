#include "drawing/charted_lamps.h"

#include "specimens/made_findings.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

/// The made findings with a mirror image that is seen as the drawn lamp is.
Findings with_twin()
{
    Findings findings = test::made_findings();
    findings.looks.push_back(findings.looks.front());
    findings.looks.back().twin = true;
    for (RowFindings& row : findings.checks.front().rows) {
        row.lamps.push_back(row.lamps.front());
        row.lamps.back().look = findings.looks.size() - 1;
    }
    return findings;
}

} // namespace

TEST_CASE("the row that decided is charted, for the lamps as drawn", "[drawing]")
{
    CHECK(charted_lamps(with_twin()) == std::vector<ChartedLamp>{{0, 0, 0}});
}

TEST_CASE("a mirror image is charted where it decided", "[drawing]")
{
    Findings findings = with_twin();
    findings.checks.front().deciding->lamp = 1;
    CHECK(charted_lamps(findings) == std::vector<ChartedLamp>{{0, 0, 0}, {0, 0, 1}});
}

TEST_CASE("where what decided looks in no direction, the worst row that does is charted",
          "[report]")
{
    Findings findings = test::made_findings();
    CheckFindings& check = findings.checks.front();
    check.rows[0].lamps[0].directions.clear();
    CHECK(foremost_charted(findings, 0) == ChartedLamp{0, 1, 0});
    check.rows[1].lamps[0].directions.clear();
    CHECK_FALSE(foremost_charted(findings, 0));
    CHECK(charted_lamps(findings).empty());
}

TEST_CASE("a row that the maker did not choose is not charted, however bad it is", "[drawing]")
{
    Findings findings = test::made_findings();
    CheckFindings& check = findings.checks.front();
    check.deciding.reset();
    CHECK(foremost_charted(findings, 0) == ChartedLamp{0, 0, 0});
    check.rows[0].not_chosen = true;
    CHECK(foremost_charted(findings, 0) == ChartedLamp{0, 1, 0});
    CHECK(charted_lamps(findings) == std::vector<ChartedLamp>{{0, 1, 0}});
    check.rows[1].not_chosen = true;
    CHECK(charted_lamps(findings).empty());
}

TEST_CASE("what lamps answer together is charted where it is worst", "[drawing]")
{
    Findings findings = test::made_findings();
    CheckFindings& check = findings.checks.front();
    check.deciding.reset();
    check.rows[0].together = check.rows[0].lamps[0];
    check.rows[0].together->relative_margin -= 1;
    // Of one lamp alone, answering together is answering: it is there once.
    CHECK(foremost_charted(findings, 0) == ChartedLamp{0, 0, 0});
    CHECK(charted_lamps(findings, 0).size() == 1);
    findings.looks.push_back(findings.looks.front());
    check.rows[0].together->look = findings.looks.size() - 1;
    CHECK(foremost_charted(findings, 0) == ChartedLamp{0, 0, 1});
}
