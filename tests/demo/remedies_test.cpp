#include "demo/demo_theme.h"
#include "judgement/session.h"
#include "remedy/added_lamp.h"
#include "remedy/relief.h"
#include "remedy/surface_change.h"

#include <catch2/catch.hpp>

#include <algorithm>

namespace {

using namespace glim;
using demo::surface;
using demo::theme;

/// Coarse: the themes are at their worst at corners of the fields, which are always looked at.
constexpr Angle step = degrees(15);

Relief relief_of(const std::string& letter) { return find_relief(theme(letter), step); }

AddedLampAnswer added_to(const std::string& letter)
{
    Study study = theme(letter);
    study.sampling.step = step;
    const Session session(study);
    const Findings findings = session.check(session.all_checks(), step, {});
    return find_added_lamp(session, *study.add_lamp, findings, {});
}

bool all_met(const std::vector<Outcome>& outcomes)
{
    return std::all_of(outcomes.begin(), outcomes.end(),
                       [](Outcome outcome) { return outcome == Outcome::met; });
}

TEST_CASE("theme A is freed by a relief no deeper than theme B's, confirmed by a check", "[demo]")
{
    const Relief relief = relief_of("a");
    REQUIRE(relief.found());
    REQUIRE(relief.after);
    for (const CheckFindings& check : relief.after->checks)
        CHECK(check.outcome == Outcome::met);
    const std::vector<SurfaceChange> drawn = surface_changes(theme("a"), theme("b"));
    const auto nose = std::find_if(drawn.begin(), drawn.end(),
                                   [](const SurfaceChange& c) { return c.surface == "nose"; });
    REQUIRE(nose != drawn.end());
    CHECK(relief.shape.deepest <= nose->deepest);
}

TEST_CASE("theme A needs an added lamp no larger than theme C's, confirmed by a check", "[demo]")
{
    const AddedLampAnswer answer = added_to("a");
    REQUIRE_FALSE(answer.alone.empty());
    CHECK(all_met(answer.alone.front().outcomes));
    CHECK(answer.alone.front().face <= area_of(surface(theme("c"), "added lens").mesh));
}

TEST_CASE("a relief of theme D's wing would run into the bumper", "[demo]")
{
    const Relief relief = relief_of("d");
    CHECK_FALSE(relief.found());
    REQUIRE(relief.limits.size() == 1);
    CHECK(relief.limits.front().barrier == ReliefBarrier::room_behind);
    CHECK(relief.limits.front().part == "bumper");
}

TEST_CASE("theme D needs an added lamp no larger than theme E's, confirmed by a check", "[demo]")
{
    const AddedLampAnswer answer = added_to("d");
    REQUIRE_FALSE(answer.alone.empty());
    CHECK(all_met(answer.alone.front().outcomes));
    CHECK(answer.alone.front().face <= area_of(surface(theme("e"), "side lens").mesh));
}

} // namespace
