#include "report/summary.h"
#include "specimens/made_findings.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("the summary says all of a check in plain words", "[report]")
{
    CHECK(summary(test::made_findings(), test::made_facts()) ==
          R"(A made study (made.toml)

NOT MET  across
  rule           made, both: both rows
  asks           at least 1250 mm2 in view, 45 to 40 deg inboard, level
  least in view  700.2 mm2 (exact), 549.8 mm2 too little; with nothing in the way 2000 mm2
  seen from      45 deg inboard, level (H -45, V 0)
  passes         0 of 2 directions; 2 not met
  not covered    45 to 40 deg inboard, level: 2 directions, as little as 700.2 mm2 in view
  in the way     surface          at worst  of that alone  where it fails
                 nose (far side)  1300 mm2       1200 mm2        1000 mm2
                 badge, "glim"     100 mm2          0 mm2          50 mm2
                 patch of nose (far side): x 210..260, y -699..-655, z 639..702 mm
  lamp           indicator: front direction indicator, left; centre 742 mm above the ground (curb),
                 assumed: the centroid of the lit face
  source         from memory: not verified; made by hand (clause 1)
  all rows       inboard: 1250 mm2 needed
                   indicator  not met    700.2 mm2  H -45, V 0
                 ahead: 2200 mm2 needed
                   indicator  undecided   1249 mm2  H -40, V 0

Warning: made.toml:3:1: something is odd
    look at it

Checks  1 not met
Looked  a direction every 5 deg and at every edge of a field; obstacles of 1 mm and more
This informs; it does not certify. The lighting regulation in force, local codes and a homologation
engineer decide.
)");
}

TEST_CASE("an estimated area says how far it may be off", "[report]")
{
    Findings findings = test::made_findings();
    findings.checks.front().deciding->row = 1;
    const std::string text = summary(findings, test::made_facts(), {.columns = 200});
    CHECK(text.find("(estimated: likely within 2.5 mm2, surely from 1240 mm2 to 1260 mm2)") !=
          std::string::npos);
    CHECK(text.find("because        the bounds of the area lie on both sides") !=
          std::string::npos);
    CHECK(text.find("1 of 2 directions, 75 % of the field's solid angle") != std::string::npos);
}

TEST_CASE("no line of the summary is longer than the terminal", "[report]")
{
    const std::string text = summary(test::made_findings(), test::made_facts(), {.columns = 60});
    std::size_t from = 0;
    for (std::size_t end; (end = text.find('\n', from)) != std::string::npos; from = end + 1)
        CHECK(end - from <= 60);
}

TEST_CASE("colour adds to the words and takes nothing away", "[report]")
{
    const std::string text =
        summary(test::made_findings(), test::made_facts(), {.columns = 100, .colour = true});
    CHECK(text.find("\x1b[1;33mNOT MET\x1b[0m  across") != std::string::npos);
    CHECK(summary(test::made_findings(), test::made_facts()).find('\x1b') == std::string::npos);
}

TEST_CASE("a blocker across the median plane is said to be on the far side", "[report]")
{
    Findings findings = test::made_findings();
    findings.looks.front().twin = true;
    const std::string text = summary(findings, test::made_facts());
    CHECK(text.find("nose (mirrored)") != std::string::npos);
    CHECK(text.find("indicator (mirrored): front direction indicator") != std::string::npos);
}

TEST_CASE("rows that ask nothing are named with the reason", "[report]")
{
    Findings findings = test::made_findings();
    RowFindings& row = findings.checks.front().rows[1];
    row.lamps.front() = {};
    row.lamps.front().outcome = Outcome::not_applicable;
    row.lamps.front().because = Because::condition_does_not_hold;
    CHECK(summary(findings, test::made_facts())
              .find("ahead: not asked, a condition of the row does not hold here\n") !=
          std::string::npos);

    row.lamps.push_back(findings.checks.front().rows.front().lamps.front());
    CHECK(summary(findings, test::made_facts())
              .find("ahead of indicator: not asked, a condition of the row does not hold here\n") !=
          std::string::npos);
}

TEST_CASE("a check of one row and one lamp says nothing twice", "[report]")
{
    Findings findings = test::made_findings();
    findings.checks.front().rows.resize(1);
    CHECK(summary(findings, test::made_facts()).find("all rows") == std::string::npos);
}

TEST_CASE("a surface that exactly hides nothing is not blamed for what sampling saw", "[report]")
{
    Findings findings = test::made_findings();
    LampVerdict& verdict = findings.checks.front().rows.front().lamps.front();
    verdict.coverage.directions_met = 2;
    findings.looks.front().exact[0]->visible = findings.looks.front().seen[0].lens;
    CHECK(summary(findings, test::made_facts()).find("in the way     surface") ==
          std::string::npos);
}

TEST_CASE("the short summary is a line a check and the caution", "[report]")
{
    CHECK(short_summary(test::made_findings(), {.columns = 200}) ==
          "NOT MET  across\n" + std::string(caution) + "\n");
}
