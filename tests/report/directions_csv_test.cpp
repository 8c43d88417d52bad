#include "report/directions_csv.h"
#include "specimens/made_findings.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("a direction that two rows ask appears once with the worse outcome", "[report]")
{
    CHECK(directions_csv(test::made_findings()) ==
          "check,lamp,h_deg,v_deg,lens_mm2,approved_mm2,visible_mm2,low_mm2,high_mm2,"
          "hidden_low_mm2,hidden_high_mm2,expected_error_mm2,mesh_error_mm2,certified,outcome,"
          "whole_cd,left_cd\n"
          "across,indicator,-45,0,2000,2000,700.25,700.24,700.26,1288,1310,0.01,0,yes,not_met,,\n"
          "across,indicator,-40,0,2100,2100,1249,1240,1260,840,860,2.5,0,yes,not_met,,\n"
          "across,indicator,0,0,3000,3000,3000,3000,3000,0,0,0,0,yes,met,,\n");
}

TEST_CASE("each check has rows of its own for the same lamp", "[report]")
{
    Findings findings = test::made_findings();
    findings.checks.push_back(findings.checks.front());
    findings.checks.back().name = "again";
    findings.checks.back().rows.erase(findings.checks.back().rows.begin());
    const std::string csv = directions_csv(findings);
    CHECK(csv.find(
              "again,indicator,-40,0,2100,2100,1249,1240,1260,840,860,2.5,0,yes,undecided,,\n") !=
          std::string::npos);
    CHECK(csv.find("again,indicator,-45") == std::string::npos);
}

TEST_CASE("a twin is told from its lamp and lamps together from single ones", "[report]")
{
    Findings findings = test::made_findings();
    findings.looks.push_back(findings.looks.front());
    findings.looks.back().twin = true;
    findings.looks.push_back(findings.looks.front());
    findings.looks.back().name = "indicator + added";
    RowFindings& row = findings.checks.front().rows.front();
    row.lamps.push_back(row.lamps.front());
    row.lamps.back().look = 1;
    row.together = row.lamps.front();
    row.together->look = 2;
    row.together->directions = {{0, {}, Outcome::met}};
    const std::string csv = directions_csv(findings);
    CHECK(csv.find("across,indicator (mirrored),-45,0,") != std::string::npos);
    CHECK(csv.find("across,indicator + "
                   "added,-45,0,2000,2000,700.25,700.24,700.26,1288,1310,0.01,0,yes,met,,\n") !=
          std::string::npos);
}

TEST_CASE("light stands beside the areas where there is a photometric file", "[report]")
{
    Findings findings = test::made_findings();
    LampLook& look = findings.looks.front();
    look.standings = {{}};
    look.light = LookLight{.files = {"made.ies"},
                           .toward = {{.whole = candelas(2), .left = candelas(1)},
                                      {.whole = {}, .left = {}},
                                      {.whole = candelas(3), .left = candelas(3)}}};
    const std::string csv = directions_csv(findings);
    // What is hidden of 2 cd is gone; nothing is known at -40; at 0 nothing is hidden.
    CHECK(csv.find("across,indicator,-45,0") != std::string::npos);
    CHECK(csv.find(",yes,met,3,3\n") != std::string::npos);
    CHECK(csv.find(",yes,not_met,,\n") != std::string::npos);
    const std::optional<Intensity> left = look.light_left(0);
    REQUIRE(left);
    CHECK(in_candelas(*left) ==
          Approx(2 * (1 - in_mm2(look.hidden(0)) / in_mm2(look.approved(0)))));
}
