#include "report/verdicts_csv.h"
#include "specimens/made_findings.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

constexpr const char* header =
    "check,check_outcome,check_because,row,lamp,outcome,because,decides,needed_mm2,least_visible_"
    "mm2,margin_mm2,"
    "hidden_mm2,worst_h_deg,worst_v_deg,expected_error_mm2,mesh_error_mm2,exact,directions_met,"
    "directions,solid_angle_met_sr,solid_angle_sr,needed_cd,whole_cd,left_cd,estimate,measured,"
    "follows,relaxed,answered_by,provenance,"
    "source,clause\n";

} // namespace

TEST_CASE("every row and lamp of a check has a line with its figures", "[report]")
{
    CHECK(verdicts_csv(test::made_findings()) ==
          std::string(header) +
              "across,not_met,of_the_figures,inboard,indicator,not_met,of_the_figures,yes,1250,700."
              "25,-549.75,"
              "1299.75,-45,0,0.01,0,yes,0,2,,,,,,,,,no,one_alone,memory,made by hand,clause 1\n"
              "across,not_met,of_the_figures,ahead,indicator,undecided,numerical_bounds,no,2200,"
              "1249,-951,"
              "0,-40,0,2.5,0,no,1,2,0.3,0.4,,,,,,,no,one_alone,memory,made by hand,clause 1\n");
}

TEST_CASE("where a row does not apply its figures are empty", "[report]")
{
    Findings findings = test::made_findings();
    CheckFindings& check = findings.checks.front();
    check.rows.resize(1);
    check.deciding.reset();
    check.outcome = Outcome::not_applicable;
    LampVerdict& verdict = check.rows.front().lamps.front();
    verdict = {};
    verdict.outcome = Outcome::not_applicable;
    verdict.because = Because::another_function;
    CHECK(verdicts_csv(findings) ==
          std::string(header) + "across,not_applicable,of_the_figures,inboard,indicator,not_"
                                "applicable,another_function,no,"
                                ",,,,,,,,,,,,,,,,,,,no,one_alone,memory,made by hand,clause 1\n");
}

TEST_CASE("lamps that answer together follow the single ones and may decide", "[report]")
{
    Findings findings = test::made_findings();
    CheckFindings& check = findings.checks.front();
    check.rows.resize(1);
    check.rows.front().together = check.rows.front().lamps.front();
    check.deciding = Deciding{.row = 0, .lamp = 0, .together = true};
    const std::string csv = verdicts_csv(findings);
    const std::size_t alone = csv.find("of_the_figures,no,1250");
    const std::size_t together = csv.find("of_the_figures,yes,1250");
    REQUIRE(together != std::string::npos);
    CHECK(alone < together);
}
