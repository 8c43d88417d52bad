#include "words/lamp_light_words.h"

#include "report/light_json.h"
#include "specimens/made_findings.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

LampVerdict lit(double needed, double whole, double left)
{
    LampVerdict verdict;
    verdict.directions = {{.at = 0, .weight = {}, .outcome = Outcome::proof_due}};
    verdict.outcome = Outcome::proof_due;
    verdict.light = LightFigures{.multiplier = {1.5, 1.5},
                                 .needed = candelas(needed),
                                 .whole = candelas(whole),
                                 .left = candelas(left),
                                 .groups = {},
                                 .worst_group = {},
                                 .margin = candelas(left - needed)};
    return verdict;
}

LampLook seen_once()
{
    LampLook look;
    look.name = "indicator";
    look.toward = {{degrees(-45), degrees(15)}};
    look.light = LookLight{.files = {"indicator.ies"}, .brightness = 0, .toward = {{}}};
    return look;
}

RuleRow row_of(Criterion criterion)
{
    RuleRow row;
    row.criterion = std::move(criterion);
    return row;
}

} // namespace

TEST_CASE("what is left of the light is told beside what the lamp gives", "[words]")
{
    const LampVerdict verdict = lit(0.45, 1.2, 0.4);
    const RuleRow row = row_of(LeastIntensity{candelas(0.3)});
    CHECK(light_figure_words(row_of(LeastIntensity{}), verdict) ==
          "0.4 cd left of 1.2 cd (estimate)");
    CHECK(light_margin_words(verdict) == "-0.05 cd");
    CHECK(light_figure_words(row_of(LeastIntensity{}), lit(0.45, 1.2, 1.2)) == "1.2 cd");
    CHECK(light_figure_words(row_of(LeastIntensity{}), lit(0.45, 1.2, 1.19999)) == "1.2 cd");
    const auto entries = light_entries(row, verdict, seen_once());
    REQUIRE(entries.size() == 3);
    CHECK(entries[0].text ==
          "0.4 cd left of 1.2 cd (estimate), 0.45 cd needed (x 1.5), H -45, V 15");
    CHECK(entries[1].text ==
          "intensity of `indicator.ies` times the share in view, every part of the "
          "lit face equally bright in that direction");
}

TEST_CASE("a group that decides is told with its sum", "[words]")
{
    LampVerdict verdict = lit(6, 10, 10);
    verdict.light->groups = {
        {"1", candelas(130), candelas(200), candelas(120), Outcome::proof_due, false}};
    verdict.light->worst_group = 0;
    verdict.light->margin = candelas(-10);
    CHECK(light_figure_words(row_of(LeastIntensity{}), verdict) ==
          "group 1: 120 cd left of 200 cd (estimate)");
    CHECK(light_margin_words(verdict) == "-10 cd");
    const auto entries = light_entries(row_of(LightTable{}), verdict, seen_once());
    CHECK(entries[1].text ==
          "group 1: 120 cd left of 200 cd (estimate), 130 cd needed, partly hidden: "
          "photometric proof due; would not suffice");
}

TEST_CASE("an estimate says that it is one, and that the measurement is due", "[words]")
{
    CHECK(estimate_words({.suffices = true}) ==
          "the visible part would suffice: an estimate; measurement due");
    CHECK(estimate_words({.suffices = false, .row = "grid"}) ==
          "the visible part would not suffice (`grid`); an estimate; measurement due");
    CHECK(
        estimate_words({.suffices = {}, .because = Because::outside_measured_range, .row = "grid"})
            .find("cannot be told (`grid`): the photometric file does not reach there") == 0);
}

TEST_CASE("a direction outside the measured range has no figure, and no zero", "[words]")
{
    LampVerdict verdict = lit(0.3, 0, 0);
    verdict.light->whole.reset();
    verdict.light->left.reset();
    verdict.light->margin.reset();
    CHECK(light_figure_words(row_of(LeastIntensity{}), verdict) == "not measured there");
    CHECK(light_margin_words(verdict) == "-");
}

TEST_CASE("a category is told with the gap that gives it or denies it", "[words]")
{
    const Measurement gap{.what = "gap to dipped beam, edge to edge", .figure = 27.44};
    CHECK(category_words({.declared = "", .possible = {"1a"}, .gap = gap}) ==
          "1a, by the gap to dipped beam, edge to edge: 27.4 mm; none is declared");
    CHECK(category_words({.declared = "1", .possible = {"1a"}, .gap = gap, .contradicts = true}) ==
          "1, as declared, which the gap to dipped beam, edge to edge: 27.4 mm does not allow: it "
          "gives `1a`");
    CHECK(category_words({.declared = "1b", .possible = {"1a"}, .gap = gap}) ==
          "1b, as declared; the gap to dipped beam, edge to edge: 27.4 mm allows it");
    CHECK(category_words({.declared = "", .possible = {"1", "1a"}, .gap = gap}) ==
          "not known: none is declared, and the gap to dipped beam, edge to edge: 27.4 mm may give "
          "`1` or `1a`");
    CHECK(category_words({.declared = "", .possible = {"1", "1a"}, .gap = {}})
              .starts_with("not known: none is declared"));
    CHECK(category_words({.declared = "1", .possible = {"1", "1a"}, .gap = {}}) ==
          "1, as declared; no gap is known that would bear it out");
}

TEST_CASE("a row that asks for the most stands on the lamp's own light", "[words]")
{
    const RuleRow row = row_of(MostIntensity{candelas(10)});
    const LampVerdict verdict = lit(10, 12, 4);
    CHECK(light_figure_words(row, verdict) == "12 cd");
    const auto entries = light_entries(row, verdict, seen_once());
    CHECK(entries.back().label == "stands on");
    CHECK(entries.back().text == "intensity of `indicator.ies`");
}

TEST_CASE("nothing in view leaves no light, which is no estimate", "[words]")
{
    CHECK(light_figure_words(row_of(LeastIntensity{}), lit(0.3, 1.2, 0)) == "0 cd left of 1.2 cd");
}

TEST_CASE("a proof that is due without photometric data has no estimate, and says so", "[words]")
{
    LampVerdict verdict = lit(0.3, 1.2, 0.4);
    verdict.light.reset();
    LampLook look = seen_once();
    look.light.reset();
    const auto entries = light_entries(row_of(NoObstacle{}), verdict, look);
    REQUIRE(entries.size() == 1);
    CHECK(entries[0].label == "estimate");
    CHECK(entries[0].text == "none, no photometric data: give `photometry`");
}

TEST_CASE("a multiplier is told with the gap and the row that give it", "[words]")
{
    LampVerdict verdict = lit(60, 80, 70);
    verdict.light->multiplier = {2, 2};
    verdict.measured = {{.what = "gap to dipped beam", .figure = 63.14, .note = "row `gap`"}};
    const auto entries = light_entries(row_of(LightTable{}), verdict, seen_once());
    CHECK(entries[1].label == "multiplier");
    CHECK(entries[1].text == "x 2: gap to dipped beam: 63.1 mm; row `gap`");
}
