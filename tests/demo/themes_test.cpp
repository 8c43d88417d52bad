#include "demo/demo_theme.h"
#include "geometry/facet_distance.h"
#include "input/shipped_tables.h"
#include "judgement/check_study.h"
#include "judgement/situations.h"
#include "judgement/tolerance_study.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <stdexcept>
#include <string>

namespace {

using namespace glim;

using demo::surface;
using demo::theme;

/// With fewer directions than the study asks for; corners of the fields are always among them, and
/// all of these themes are at their worst there.
Findings checked(const std::string& letter)
{
    Study study = theme(letter);
    study.sampling.step = degrees(15);
    return check_study(study);
}

Length distance_to_mesh(const TriangleMesh& mesh, const Point& p)
{
    Length least = distance_to_facet(mesh, 0, p);
    for (std::size_t f = 1; f < mesh.facets.size(); ++f)
        least = std::min(least, distance_to_facet(mesh, f, p));
    return least;
}

TEST_CASE("the demo's themes read without a warning", "[demo]")
{
    for (const char* letter : {"a", "a-light", "b", "b-states", "c", "d", "e"}) {
        const Study study = theme(letter);
        for (const Warning& w : study.warnings)
            UNSCOPED_INFO(w.what);
        CHECK(study.warnings.empty());
    }
}

TEST_CASE("theme A: the nose hides the indicator, and everything else of it is in order", "[demo]")
{
    const Findings found = checked("a");
    REQUIRE(found.checks.size() == 2);
    for (const CheckFindings& check : found.checks) {
        CHECK(check.outcome == Outcome::not_met);
        const LampVerdict& verdict = check.deciding_verdict();
        REQUIRE_FALSE(verdict.blockers.empty());
        CHECK(verdict.blockers.front().surface == "nose");
        CHECK(in_mm2(verdict.least_visible) > 500);
        CHECK(in_mm2(verdict.least_visible) < 1000);
        for (const UncoveredRange& range : verdict.uncovered)
            CHECK(in_degrees(range.h_most) < -30);
    }
}

TEST_CASE("theme B: the relief clears it with 100 mm2 to spare", "[demo]")
{
    const Findings found = checked("b");
    for (const CheckFindings& check : found.checks) {
        CHECK(check.outcome == Outcome::met);
        CHECK(in_mm2(check.deciding_verdict().margin) > 100);
    }
}

/// The front indicator under the rule of no obstacle, its bezel and housing approved with it.
Findings without_obstacle(const std::string& letter)
{
    Study study = theme(letter);
    study.sampling.step = degrees(15);
    study.tables.push_back(find_rule_table("un-r48", GLIM_SOURCE_DIR));
    const std::vector<LampId> asked = study.checks.front().lamps;
    study.checks = {{"un", study.tables.size() - 1, "front-indicator-visibility", asked}};
    for (const SurfaceId s : study.surfaces.ids())
        if (study.surfaces[s].name == "lamp bezel" || study.surfaces[s].name == "lamp housing")
            for (const LampId lamp : asked)
                study.lamps[lamp].approved_with.push_back(s);
    return check_study(study);
}

TEST_CASE("theme A under the rule of no obstacle: the nose hides a part, so proof is due", "[demo]")
{
    const Findings found = without_obstacle("a");
    const CheckFindings& check = found.checks.front();
    CHECK(check.outcome == Outcome::proof_due);
    CHECK(check.deciding_row().row.id == "front-indicator-field");
    CHECK(in_mm2(check.deciding_verdict().hidden) > 1000);
    REQUIRE_FALSE(check.deciding_verdict().blockers.empty());
    CHECK(check.deciding_verdict().blockers.front().surface == "nose");
}

TEST_CASE("theme B meets its area, but not the whole lens clears: proof stays due", "[demo]")
{
    const Findings found = without_obstacle("b");
    const CheckFindings& check = found.checks.front();
    CHECK(check.outcome == Outcome::proof_due);
    CHECK(in_mm2(check.deciding_verdict().hidden) > 100);
}

const CheckFindings& check_named(const Findings& found, const std::string& name)
{
    for (const CheckFindings& check : found.checks)
        if (check.name == name)
            return check;
    throw std::runtime_error("no check " + name);
}

TEST_CASE("theme A by light: the area fails, and half of a bright beam would do across the nose",
          "[demo]")
{
    const Findings found = checked("a-light");
    CHECK(check_named(found, "across the nose").outcome == Outcome::not_met);
    // The field's corner across the nose: the file gives 4.9 cd, and a good two fifths of what the
    // lamp shows there is in view; 0.3 cd are asked.
    const CheckFindings& option = check_named(found, "visibility by light");
    CHECK(option.outcome == Outcome::proof_due);
    const LampVerdict& verdict = option.deciding_verdict();
    REQUIRE(verdict.light);
    CHECK(in_candelas(*verdict.light->whole) == Approx(4.87).epsilon(0.01));
    CHECK(*verdict.light->left > candelas(1.5));
    CHECK(*verdict.light->left < candelas(2.7));
    REQUIRE(verdict.estimate);
    CHECK(verdict.estimate->suffices == true);
}

TEST_CASE("theme A by light: its beam is free, and bright enough beside the dipped beam", "[demo]")
{
    const CheckFindings check = check_named(checked("a-light"), "front turn signal light");
    CHECK(check.outcome == Outcome::met);
    const LightFigures& light = *check.deciding_verdict().light;
    CHECK(light.multiplier.least == 2);
    REQUIRE(light.groups.size() == 5);
    CHECK(in_candelas(light.groups[2].needed) == 1900);
}

TEST_CASE("theme A under the rule of no obstacle: proof is due, and would succeed by estimate",
          "[demo]")
{
    const CheckFindings check =
        check_named(checked("a-light"), "no obstacle, and the estimate of its proof");
    CHECK(check.outcome == Outcome::proof_due);
    REQUIRE(check.deciding_verdict().estimate);
    CHECK(check.deciding_verdict().estimate->suffices == true);
}

TEST_CASE("theme B differs from theme A in the nose only, and by less than 25 mm", "[demo]")
{
    const Study a = theme("a");
    const Study b = theme("b");
    for (const Surface& s : a.surfaces)
        if (s.name != "nose" && s.name != "grille")
            CHECK(surface(b, s.name).mesh.points == s.mesh.points);
    const TriangleMesh& drawn = surface(a, "nose").mesh;
    const TriangleMesh& relieved = surface(b, "nose").mesh;
    constexpr std::size_t every = 5; // of the points: all of them would take long
    Length deepest = millimetres(0);
    for (std::size_t i = 0; i < relieved.points.size(); i += every)
        deepest = std::max(deepest, distance_to_mesh(drawn, relieved.points[i]));
    // The relief itself is 18 mm deep; the rolled edge of the grille's opening moves with it.
    CHECK(in_mm(deepest) < 25);
    CHECK(in_mm(deepest) > 12);
}

TEST_CASE("theme C: the added lamp meets both rules alone", "[demo]")
{
    const Findings found = checked("c");
    for (const CheckFindings& check : found.checks) {
        CHECK(check.outcome == Outcome::met);
        CHECK(found.looks[check.deciding_verdict().look].name == "added");
        CHECK(in_mm2(check.deciding_verdict().margin) > 100);
    }
}

TEST_CASE("theme D: the shoulder hides the indicator far outboard", "[demo]")
{
    const Findings found = checked("d");
    REQUIRE(found.checks.size() == 1);
    CHECK(found.checks[0].outcome == Outcome::not_met);
    CHECK(found.checks[0].deciding_verdict().blockers.front().surface == "wing");
}

TEST_CASE("theme E: the side indicator answers where the shoulder hides the first one", "[demo]")
{
    const Findings found = checked("e");
    REQUIRE(found.checks.size() == 1);
    CHECK(found.checks[0].outcome == Outcome::met);
    CHECK(found.looks[found.checks[0].deciding_verdict().look].name == "side");
}

TEST_CASE("theme B's load tray may be down, but not up, and no state changes an outcome", "[demo]")
{
    const Study study = theme("b-states");
    const SituationFindings found = find_situations(study, degrees(15), {});
    std::size_t up = 0, down = 0, states = 0;
    for (std::size_t i = 0; i < found.situations.size(); ++i) {
        const Situation& s = found.situations[i];
        if (!s.state.empty()) {
            ++states;
            CHECK(found.at(i).outcome == found.at(s.check).outcome);
        }
        if (!s.moved || !s.is_verdict)
            continue;
        const PartPosition& position =
            study.moved_parts[s.moved->part].positions[s.moved->position];
        const bool is_up = position.name == "folded up";
        (is_up ? up : down) += 1;
        CHECK(found.at(i).outcome == (is_up ? Outcome::not_met : Outcome::met));
    }
    CHECK(up == 1);
    CHECK(down == 2); // the tray down, the bonnet open
    CHECK(states == 6);
}

TEST_CASE(
    "theme B's tolerances leave too few builds for the wanted share, and some factor would do",
    "[demo]")
{
    Study study = theme("b");
    ToleranceTask& task = study.variation.task;
    task.step = degrees(15);
    task.builds = 256;
    task.directions = 4;
    REQUIRE(task.asked);
    const ToleranceFindings found = study_tolerances(Session(study), {});
    for (const ToleratedCheck& check : found.checks) {
        CHECK(check.as_drawn == Outcome::met);
        CHECK(check.share.share > 0.95);
        CHECK(check.share.share < task.share);
    }
    const auto may_fail = [](const ToleratedVerdict& verdict) {
        return verdict.worst && verdict.worst->outcome == Outcome::not_met;
    };
    CHECK(std::any_of(found.verdicts.begin(), found.verdicts.end(), may_fail));
    REQUIRE(found.needed);
    REQUIRE(found.needed->factor);
    CHECK(*found.needed->factor > 0);
    CHECK(*found.needed->factor < 1);
}

} // namespace
