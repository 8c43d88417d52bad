#include "drawing/profile.h"

#include "specimens/knife_edge.h"
#include "specimens/made_fields.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace glim;
using namespace glim::test;

TEST_CASE("the profile along H stops being met where the knife edge has it", "[drawing]")
{
    const Findings f = behind_knife_edge({{rectangle(-45, 80, -15, 15)}});
    const auto s = subject_of(f);
    const Profile p = profile_along_h(*s, f.looks[0], degrees(0.3));
    CHECK(p.along_h);
    CHECK(p.at == Angle()); // the nearest line
    REQUIRE(p.stretches.size() == 1);
    CHECK(p.stretches[0].size() == 126);
    REQUIRE_FALSE(p.not_met.empty());
    CHECK(in_degrees(p.not_met.front().from) == Approx(42.9852).margin(0.05));
    CHECK(p.not_met.back().to == degrees(80));
    CHECK(p.not_met.back().outcome == Outcome::not_met);
    // What is too near to tell stands between, without a gap.
    for (std::size_t i = 1; i < p.not_met.size(); ++i)
        CHECK(p.not_met[i].from == p.not_met[i - 1].to);
    for (const ProfilePoint& point : p.stretches[0]) {
        CHECK(point.likely_error >= 0);
        if (point.proved) {
            CHECK(point.proved->first <= point.figure);
            CHECK(point.figure <= point.proved->second);
        }
        CHECK(point.threshold == 1250);
    }
}

TEST_CASE("the profile along V of one H is met nowhere or everywhere as its figures are",
          "[report]")
{
    const Findings f = behind_knife_edge({{rectangle(-45, 80, -15, 15)}});
    const auto s = subject_of(f);
    CHECK(profile_along_v(*s, f.looks[0], degrees(20)).not_met.empty());
    const Profile p = profile_along_v(*s, f.looks[0], degrees(50));
    REQUIRE(p.not_met.size() == 1);
    CHECK(p.not_met[0].from == degrees(-15));
    CHECK(p.not_met[0].to == degrees(15));
}

TEST_CASE("a gap in the field is a gap in the profile", "[drawing]")
{
    const Findings f = behind_knife_edge({{rectangle(-30, -20, 0, 5), rectangle(20, 30, 0, 5)}});
    const Profile p = profile_along_h(*subject_of(f), f.looks[0], Angle());
    REQUIRE(p.stretches.size() == 2);
    CHECK(p.stretches[0].back().along == degrees(-20));
    CHECK(p.stretches[1].front().along == degrees(20));
}

TEST_CASE("a point has no profile", "[drawing]")
{
    const Findings f = behind_knife_edge({{rectangle(10, 10, 5, 5)}});
    CHECK(profile_along_h(*subject_of(f), f.looks[0], Angle()).empty());
    CHECK(profile_along_v(*subject_of(f), f.looks[0], Angle()).empty());
}
