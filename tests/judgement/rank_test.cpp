#include "judgement/rank.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

LampVerdict verdict(Outcome outcome, double relative_margin)
{
    LampVerdict v;
    v.outcome = outcome;
    v.relative_margin = relative_margin;
    return v;
}

} // namespace

TEST_CASE("the outcome ranks before the margin, and a smaller margin is worse", "[judgement]")
{
    const LampVerdict failed = verdict(Outcome::not_met, 0.5);
    const LampVerdict narrow = verdict(Outcome::met, 0.1), wide = verdict(Outcome::met, 0.9);
    CHECK(rank_of(failed) < rank_of(narrow));
    CHECK(rank_of(narrow) < rank_of(wide));
    CHECK(rank_of(wide) == rank_of(verdict(Outcome::met, 0.9)));
}

TEST_CASE("a check ranks by its own outcome and the margin of what decided", "[judgement]")
{
    CheckFindings check;
    check.outcome = Outcome::undecided;
    CHECK(rank_of(check) == Rank(Outcome::undecided, 0));
    check.rows.emplace_back().lamps = {verdict(Outcome::met, 1), verdict(Outcome::met, -0.25)};
    check.deciding = Deciding{0, 1, false};
    CHECK(rank_of(check) == Rank(Outcome::undecided, -0.25));
}
