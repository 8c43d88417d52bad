#include "judgement/built_looks.h"

#include "judgement/made_rules.h"
#include "judgement/see.h"
#include "shapes/random_numbers.h"
#include "shapes/rough_scene.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;
using namespace glim::shapes;

namespace {

Tolerance straying(const std::string& name, SurfaceId surface, double shift_mm, double turn_deg)
{
    Tolerance t;
    t.name = name;
    t.surfaces = {surface};
    t.about = Point(0, 0, 0);
    for (const ToleranceWay way : {ToleranceWay::forward, ToleranceWay::outboard, ToleranceWay::up})
        t.by[static_cast<std::size_t>(way)] = shift_mm;
    t.by[static_cast<std::size_t>(ToleranceWay::turn)] = turn_deg;
    return t;
}

/// A wrapped lens in clutter; every body strays by itself. Two fields that overlap ask for areas.
Study cluttered()
{
    const RuleRow wide = made_row("wide", LeastArea{square_millimetres(900)}, -20, 60, -10, 10);
    const RuleRow inner = made_row("inner", LeastArea{square_millimetres(1500)}, -20, 20, -5, 5);
    Study study = asking(
        lamp_behind(wrapped_lens(), clutter(4, 9)), "both", {wide, inner},
        {{.id = "both", .title = "", .combine = Combine::all_of, .parts = {"wide", "inner"}}});
    for (const SurfaceId s : study.surfaces.ids())
        study.variation.tolerances.push_back(
            straying("t" + std::to_string(s.index), s, 1, s.index % 2 == 0 ? 0.2 : 0));
    return study;
}

/// A study's builds, looked at in every direction of its fields.
struct Builds {
    explicit Builds(const Study& s)
        : study(s), scene(study), moves(study, build_factors(study.variation.tolerances)),
          widest(moves.widest(std::vector<double>(study.variation.tolerances.size(), 1.0))),
          parts(study, scene, moves, widest, {}),
          looks({study, scene, moves, parts, widest}, plan(), {})
    {
    }
    Plan plan() const
    {
        Plan plan = plan_of(study, scene, std::vector<std::size_t>{0}, degrees(5));
        for (std::vector<bool>& certify : plan.certify)
            certify.assign(certify.size(), false);
        ask_what_outcomes_need(plan);
        Eyes(study, scene, plan, {}).see(plan, Workers());
        return plan;
    }

    const Study& study;
    PreparedScene scene;
    BuildMoves moves;
    Extents widest;
    OffsetParts parts;
    BuiltLooks looks;
};

} // namespace

TEST_CASE("leaving out who surely sees more changes no build's least area", "[judgement]")
{
    const Study study = cluttered();
    const Builds builds(study);
    REQUIRE(builds.looks.followed().size() == 2);
    BuiltLooks::Bench bench = builds.looks.bench();
    RandomNumbers random(17);
    for (int i = 0; i < 20; ++i) {
        std::vector<double> deviations;
        for (const BuildFactor& f : builds.moves.factors())
            deviations.push_back(random.real(-0.5, 0.5) *
                                 builds.widest[f.tolerance][static_cast<std::size_t>(f.way)]);
        const std::vector<BuildLook> found = builds.looks.look(bench, deviations);
        const std::vector<std::vector<Area>> all = builds.looks.standings(bench, deviations);
        for (std::size_t v = 0; v < found.size(); ++v) {
            const std::vector<std::size_t>& at =
                builds.looks.asked_of(builds.looks.followed()[v]).at;
            const auto least = std::min_element(all[v].begin(), all[v].end());
            const auto named = std::find(at.begin(), at.end(), found[v].at);
            REQUIRE(named != at.end());
            INFO("build " << i << ", verdict " << v);
            CHECK(found[v].figure == all[v][static_cast<std::size_t>(named - at.begin())]);
            // The first of those that are the same to a hundredth.
            CHECK(found[v].figure <= *least + square_millimetres(0.01));
            CHECK(named - at.begin() <= least - all[v].begin());
        }
    }
}
