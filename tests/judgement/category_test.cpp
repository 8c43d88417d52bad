// Categories by the gap to the dipped beam. The lens is 60 x 40 mm about y = 0, so that its inner
// edge is at y = -30; the beam is 100 mm wide and its outer edge stands `gap` mm inboard of that.

#include "judgement/category.h"

#include "judgement/asked_light.h"
#include "judgement/check_study.h"
#include "judgement/made_rules.h"
#include "shapes/made_light.h"
#include "shapes/simple_shapes.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

GapToLamp by_gap()
{
    return {.to = {LampFunction::dipped_beam},
            .from = GapFrom::edge,
            .steps = {{millimetres(40), "1"}, {millimetres(20), "1a"}, {millimetres(0), "1b"}},
            .is_category = true};
}

RuleRow row_for(const std::string& category, double least_cd)
{
    RuleRow row = made_row(category, at_least_cd(least_cd), 0, 0, 0, 0);
    row.when = {{.quantity = Measured::lamp_category, .one_of = {category}}};
    return row;
}

/// 175, 250 and 400 cd by category, and the lamp gives 300 on its axis.
Study by_category(std::optional<double> gap_mm, const std::string& declared)
{
    Study study = lit_in_the_open(lambert(300));
    study.lamps[LampId{0}].category = declared;
    if (gap_mm)
        add_lamp(study, "beam", LampFunction::dipped_beam, plate({0, -80 - *gap_mm, 0}, 100, 40));
    RuleRow gap = made_row("gap", by_gap());
    gap.functions = {LampFunction::front_indicator};
    return asking(
        std::move(study), "all", {row_for("1", 175), row_for("1a", 250), row_for("1b", 400), gap},
        {{.id = "all", .title = "", .combine = Combine::all_of, .parts = {"1", "1a", "1b"}}});
}

std::vector<Outcome> outcomes(const Findings& findings)
{
    std::vector<Outcome> all;
    for (std::size_t row = 0; row < 3; ++row)
        all.push_back(verdict(findings, row).outcome);
    return all;
}

constexpr Outcome passed_over = Outcome::not_applicable;

} // namespace

TEST_CASE("a lamp that declares no category has the one that its gap gives", "[judgement]")
{
    const Findings wide = check_study(by_category(45, ""));
    CHECK(outcomes(wide) == std::vector{Outcome::met, passed_over, passed_over});
    CHECK(verdict(wide, 0).category->counts() == "1");
    CHECK(verdict(wide, 0).category->gap->figure == Approx(45));
    const Findings middle = check_study(by_category(25, ""));
    CHECK(outcomes(middle) == std::vector{passed_over, Outcome::met, passed_over});
    const Findings narrow = check_study(by_category(15, ""));
    CHECK(outcomes(narrow) == std::vector{passed_over, passed_over, Outcome::not_met});
    CHECK(answer(narrow).outcome == Outcome::not_met);
    CHECK(!verdict(narrow, 2).category->contradicts);
}

TEST_CASE("a declared category counts, and a gap that does not allow it is told", "[judgement]")
{
    const Findings too_weak = check_study(by_category(25, "1"));
    CHECK(outcomes(too_weak) == std::vector{Outcome::met, passed_over, passed_over});
    CHECK(verdict(too_weak).category->contradicts);
    CHECK(verdict(too_weak).category->possible == std::vector<std::string>{"1a"});
    // A stronger one than the gap needs is allowed.
    const Findings stronger = check_study(by_category(45, "1a"));
    CHECK(outcomes(stronger) == std::vector{passed_over, Outcome::met, passed_over});
    CHECK(!verdict(stronger, 1).category->contradicts);
}

TEST_CASE("the category that counts is told with every row of the check", "[judgement]")
{
    const Findings f = check_study(by_category(25, "1"));
    for (const RowFindings& row : answer(f).rows) {
        REQUIRE(row.lamps.front().category);
        CHECK(row.lamps.front().category->contradicts);
    }
}

TEST_CASE("without the lamp that the gap leads to the category stays open", "[judgement]")
{
    const Findings f = check_study(by_category({}, ""));
    CHECK(outcomes(f) == std::vector(3, Outcome::undecided));
    CHECK(verdict(f).because == Because::category_not_known);
    CHECK(answer(f).outcome == Outcome::undecided);
    CHECK(verdict(f).category->counts().empty());
    CHECK(!verdict(f).category->gap);
    // Declared, it needs no gap.
    CHECK(outcomes(check_study(by_category({}, "1a"))) ==
          std::vector{passed_over, Outcome::met, passed_over});
}

TEST_CASE("a gap nearer to a limit than the meshes are accurate gives no category", "[judgement]")
{
    Study study = by_category(40.5, "");
    study.surfaces[SurfaceId{1}].chord = {.error = millimetres(1), .estimated = true};
    const Findings f = check_study(study);
    CHECK(outcomes(f) == std::vector{Outcome::undecided, Outcome::undecided, passed_over});
    CHECK(verdict(f).category->possible == std::vector<std::string>{"1", "1a"});
    study.surfaces[SurfaceId{1}].chord.error = millimetres(0.4);
    CHECK(outcomes(check_study(study)) == std::vector{Outcome::met, passed_over, passed_over});
}

TEST_CASE("a lamp of a category that no gap gives is told apart", "[judgement]")
{
    const CategoryByGap of_side = category_by_gap(by_gap(), {}, "5");
    CHECK(of_side.counts() == "5");
    CHECK(!of_side.contradicts);
    LampVerdict measured;
    measured.follows = "1a";
    measured.measured = {{.what = "gap", .figure = 30}};
    CHECK(category_by_gap(by_gap(), measured, "5").contradicts);
    CHECK(may_follow(by_gap(), measured) == std::vector<std::string>{"1a"});
    CHECK(may_follow(by_gap(), {}) == std::vector<std::string>{"1", "1a", "1b"});
}
