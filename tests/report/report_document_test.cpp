#include "report/report_document.h"

#include "report/html_page.h"
#include "specimens/made_findings.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

std::string page_of(const Findings& findings)
{
    const RunFacts facts = test::made_facts();
    return html_page(report_document({findings, facts, {}, {}}));
}

std::string page() { return page_of(test::made_findings()); }

bool holds(const std::string& page, const std::string& what)
{
    return page.find(what) != std::string::npos;
}

} // namespace

TEST_CASE("a report begins with the answer, the worst margin and where it is", "[report]")
{
    CHECK(holds(page(), "<h1>Lamp visibility: A made study</h1>"));
    CHECK(holds(page(), "Of 1 check: 1 not met."));
    CHECK(
        holds(page(),
              "Not met: 700.2 mm\u00b2 in view where 1250 mm\u00b2 are needed, 549.8 mm\u00b2 too "
              "little; decided by indicator, seen from 45\u00b0 inboard, level."));
}

TEST_CASE("a report has every row that applies, and names those that do not", "[report]")
{
    CHECK(holds(page(), "<th scope=\"row\">inboard</th>"));
    CHECK(holds(page(), "<th scope=\"row\">ahead</th>"));
    Findings findings = test::made_findings();
    LampVerdict& verdict = findings.checks.front().rows[1].lamps[0];
    verdict = {};
    verdict.outcome = Outcome::not_applicable;
    verdict.because = Because::another_function;
    const std::string without = page_of(findings);
    CHECK_FALSE(holds(without, "<th scope=\"row\">ahead</th>"));
    CHECK(holds(without, "Not asked, because the row speaks of other functions: ahead."));
}

TEST_CASE("a report names what hides a lamp and where", "[report]")
{
    CHECK(holds(page(), "<th scope=\"row\">nose (far side)</th>"
                        "<td class=\"figures-column\">1200 mm\u00b2</td>"
                        "<td class=\"figures-column\">99.8 mm\u00b2</td>"));
    CHECK(holds(page(), "x 210..260, y -699..-655, z 639..702 mm"));
}

TEST_CASE("a report tells what it stands on", "[report]")
{
    CHECK(holds(page(), std::string(64, 'a')));
    CHECK(holds(page(), "<td class=\"figures-column\">4096</td>"));
    CHECK(holds(page(), "cornerglim check made.toml"));
    CHECK(holds(page(), "made.toml:3:1: something is odd (look at it)"));
    CHECK(holds(page(), "from memory: not verified"));
}

namespace {

Figure figure(const std::string& title)
{
    return {{10, 10, [](Canvas&) {}}, title, "", "made for a test", true};
}

std::size_t count_of(const std::string& what, const std::string& in)
{
    std::size_t count = 0;
    for (std::size_t at = in.find(what); at != std::string::npos; at = in.find(what, at + 1))
        ++count;
    return count;
}

} // namespace

TEST_CASE("every figure stands in a report once, where it belongs", "[report]")
{
    Findings findings = test::made_findings();
    findings.checks.push_back(findings.checks.front());
    findings.checks.back().name = "again";
    const RunFacts facts = test::made_facts();
    ReportFigures figures;
    figures.charts = {{{0, 0, 0}, {figure("Map")}}, {{1, 0, 0}, {figure("Second map")}}};
    figures.pictures.vehicles = {{0, figure("Corner")}, {1, figure("Second corner")}};
    figures.pictures.eyes = {{0, {}, figure("Shared view"), {0, 1}},
                             {0, {}, figure("Own view"), {1}}};
    const std::string page = html_page(report_document({findings, facts, figures, {}}));
    const std::size_t second = page.find("Check: again</h2>");
    const auto place = [&](const std::string& title) {
        const std::string caption = "<strong>" + title + "</strong>";
        CHECK(count_of(caption, page) == 1);
        return page.find(caption);
    };
    CHECK(place("Corner") < page.find("Check: across</h2>")); // on the first page
    CHECK(place("Map") < second);
    CHECK(place("Shared view") < second);
    CHECK(place("Second corner") > second);
    CHECK(place("Second map") > second);
    CHECK(place("Own view") > second);
    CHECK(holds(page, "Shown already: Shared view (under \u201cacross\u201d)."));
}

TEST_CASE("a report says who decides", "[report]")
{
    CHECK(holds(page(), std::string(caution)));
    CHECK(holds(page(), "What this does not tell"));
}

TEST_CASE("a check in which nothing applies is told all the same", "[report]")
{
    Findings findings = test::made_findings();
    CheckFindings& check = findings.checks.front();
    check.outcome = Outcome::not_applicable;
    check.deciding.reset();
    for (RowFindings& row : check.rows) {
        row.lamps.front() = {};
        row.lamps.front().outcome = Outcome::not_applicable;
        row.lamps.front().because = Because::condition_does_not_hold;
    }
    CHECK(holds(page_of(findings), "Of 1 check: 1 not applicable."));
    CHECK(holds(page_of(findings), "a condition of the row does not hold here: inboard and ahead"));
}

TEST_CASE("a report changes no name and no command, whatever signs they hold", "[report]")
{
    Findings findings = test::made_findings();
    findings.looks.front().name = "indicator 8 mm2";
    findings.checks.front().name = "check 5 deg";
    findings.title.clear();
    RunFacts facts = test::made_facts();
    facts.study = "lamp 5 deg, 8 mm2 .toml";
    facts.command = "cornerglim report 'lamp 5 deg, 8 mm2 .toml'";
    facts.files.front().file = facts.study;
    facts.names = {"indicator 8 mm2", "check 5 deg", facts.study, facts.command};
    const std::string page = html_page(report_document({findings, facts, {}, {}}));
    CHECK(holds(page, "<h1>Lamp visibility: lamp 5 deg, 8 mm2 .toml</h1>"));
    CHECK(holds(page, "<th scope=\"row\">lamp 5 deg, 8 mm2 .toml</th>"));
    CHECK(holds(page, "<dd>" + facts.command + " (in the study"));
    CHECK(holds(page, "Check: check 5 deg</h2>"));
    CHECK(holds(page, "decided by indicator 8 mm2, seen from 45\u00b0 inboard"));
    CHECK_FALSE(holds(page, "check 5\u00b0"));
}

TEST_CASE("the first page tells of every lamp under the row that decided", "[report]")
{
    Findings findings = test::made_findings();
    LampLook look = findings.looks.front();
    look.name = "second indicator";
    findings.looks.push_back(look);
    RowFindings& row = findings.checks.front().rows[findings.checks.front().deciding->row];
    LampVerdict verdict = row.lamps.front();
    verdict.look = findings.looks.size() - 1;
    verdict.outcome = Outcome::met;
    verdict.least_visible = square_millimetres(1312);
    verdict.margin = square_millimetres(62);
    row.lamps.push_back(verdict);
    const std::string page = page_of(findings);
    const std::string first_page = page.substr(0, page.find("Check: across</h2>"));
    CHECK(holds(first_page, "<td class=\"met\">met</td><td>second indicator</td>"
                            "<td class=\"figures-column\">1312 mm\u00b2</td>"
                            "<td class=\"figures-column\">+62 mm\u00b2</td>"
                            "<td>45\u00b0 inboard, level</td>"));
    row.lamps.back().outcome = Outcome::not_applicable;
    const std::string without = page_of(findings);
    CHECK_FALSE(holds(without.substr(0, without.find("Check: across</h2>")), "<td>second indi"));
}

TEST_CASE("the first page shows the worst check that has a picture", "[report]")
{
    Findings findings = test::made_findings();
    findings.checks.push_back(findings.checks.front());
    findings.checks.back().name = "better";
    findings.checks.back().outcome = Outcome::met;
    const RunFacts facts = test::made_facts();
    ReportFigures figures;
    figures.pictures.vehicles = {{1, figure("Corner")}};
    const std::string page = html_page(report_document({findings, facts, figures, {}}));
    CHECK(count_of("<strong>Corner</strong>", page) == 1);
    CHECK(page.find("<strong>Corner</strong>") < page.find("Check: across</h2>"));
}
