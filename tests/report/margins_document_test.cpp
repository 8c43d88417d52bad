#include "report/margins_document.h"

#include "judgement/made_rules.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

Study wall_study()
{
    Study study = shapes::asking(shapes::lamp_behind(shapes::plate(Point(0, 0, 0), 100, 50),
                                                     {shapes::wall(50, -200, 200, -200, -40)}),
                                 "both",
                                 {shapes::made_row("front", NoObstacle{}, -10, 10, -5, 5),
                                  shapes::made_row("level", LevelAxis{degrees(3)}),
                                  shapes::made_row("other", NoObstacle{}, -10, 10, -5, 5)},
                                 {Rule{.id = "inner", .title = "", .parts = {"front", "level"}},
                                  Rule{.id = "both", .title = "", .parts = {"inner", "front"}}});
    study.tables.front().rows[0].citation.source = "the front's source";
    return study;
}

MarginFindings findings(bool met)
{
    MarginFindings found;
    CheckMargins check{.check = 0, .met = met, .margin = {}, .margins = {}, .left_out = {}};
    SurfaceMargin up;
    up.surface = SurfaceId{1};
    up.way = MarginWay::up;
    up.along = millimetres(3.25);
    up.gain_mm = -12;
    check.margins = {up};
    found.checks = {check};
    return found;
}

template <class Kind>
std::vector<const Kind*> all_of(const Document& document)
{
    std::vector<const Kind*> all;
    for (const Block& block : document.blocks)
        if (const auto* kind = std::get_if<Kind>(&block))
            all.push_back(kind);
    return all;
}

} // namespace

TEST_CASE("the page of margins has a sentence, a chart and a table a check", "[report]")
{
    const Study study = wall_study();
    const Document page = margins_document(findings(true), study, {}, "the command");
    CHECK(all_of<Notice>(page).size() == 1);
    CHECK(all_of<Paragraph>(page).front()->tone == Tone::met);
    REQUIRE(all_of<Figures>(page).size() == 1);
    CHECK(all_of<Figures>(page).front()->figures.front().alt.find("3.25 mm up") !=
          std::string::npos);
    REQUIRE(all_of<Table>(page).size() == 1);
    const Table& table = *all_of<Table>(page).front();
    CHECK(table.columns[2].title == "Spoils it");
    CHECK(table.rows.front()[2].text == "3.25 mm up");
    CHECK(all_of<Terms>(page).back()->terms.back().lines.front() == "the command");
}

TEST_CASE("the page names every row of the rule once with its source", "[report]")
{
    const Study study = wall_study();
    const Document page = margins_document(findings(false), study, {}, "");
    const std::vector<Term>& rows = all_of<Terms>(page).front()->terms;
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].label == "front");
    CHECK(rows[1].label == "level");
    CHECK(rows[0].lines.back().find("the front's source") != std::string::npos);
    CHECK(all_of<Paragraph>(page).front()->tone == Tone::not_met);
    CHECK(all_of<Table>(page).front()->columns[2].title == "Mends it");
}

TEST_CASE("a check without margins in mm says why", "[report]")
{
    const Study study = wall_study();
    MarginFindings found = findings(false);
    found.checks.front().margins.clear();
    found.checks.front().left_out = "its rows ask for light";
    const Document page = margins_document(found, study, {}, "");
    CHECK(all_of<Paragraph>(page).front()->text.find("its rows ask for light") !=
          std::string::npos);
    CHECK(all_of<Figures>(page).empty());
}
