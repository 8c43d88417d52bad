// What charts are of. The lens, 60 x 40 mm and equally bright with 3 cd on its axis, stands behind
// a knife edge: 3 cosV cosH (80 - 40 tanH) / 60 cd are left outboard of 26.565 degrees.

#include "drawing/charted.h"

#include "drawing/charts.h"
#include "drawing/profile.h"
#include "judgement/asked_light.h"
#include "judgement/check_study.h"
#include "judgement/made_rules.h"
#include "shapes/made_light.h"
#include "specimens/knife_edge.h"
#include "specimens/look_at.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace glim;
using namespace glim::test;
using namespace glim::shapes;

namespace {

Findings light_behind_knife_edge(Criterion criterion, int measured_to = 90)
{
    Study study = lit_behind_knife_edge(lambert(3));
    study.lights = {made_light_within(measured_to, lambert(3))};
    return asked(study, std::move(criterion), -45, 80, -15, 15);
}

std::vector<std::string> titles(const Findings& f)
{
    std::vector<std::string> all;
    const CheckFindings& check = f.checks.front();
    BlockingMap blocking;
    blocking.most.resize(check.rows[0].lamps[0].directions.size());
    int number = 0;
    for (const Figure& figure :
         charts_of(f, check, check.rows[0], check.rows[0].lamps[0], blocking)) {
        all.push_back(figure.title);
        look_at("light-" + std::to_string(++number), figure.drawing);
    }
    return all;
}

} // namespace

TEST_CASE("charts of light have a map, what hides it, and cuts", "[drawing]")
{
    const Findings f = light_behind_knife_edge(at_least_cd(0.3));
    const std::vector<std::string> all = titles(f);
    REQUIRE(all.size() >= 5);
    CHECK(all[0] == "Light left by direction");
    CHECK(all[1] == "What hides the lamp most");
    CHECK(all[2] == "Light left about the axis");
    CHECK(all[3] == "Light left along H, level");
}

TEST_CASE("the line of what is asked runs where the light has fallen to it", "[drawing]")
{
    // At V 0: 80 cosH - 40 sinH = 6, H 59.588.
    const auto s = subject_of(light_behind_knife_edge(at_least_cd(0.3)));
    CHECK(s->charted == Charted::light_left);
    CHECK(s->threshold_label == "0.3 cd");
    bool crosses = false;
    for (const BearingLine& line : s->threshold)
        for (const Bearing& b : line.points)
            if (std::abs(in_degrees(b.v)) < 1e-9) {
                crosses = true;
                CHECK(in_degrees(b.h) == Approx(59.588).margin(0.1));
            }
    CHECK(crosses);
}

TEST_CASE("a profile of light has what is left and what the lamp gives by itself", "[drawing]")
{
    const Findings f = light_behind_knife_edge(at_least_cd(0.3));
    const Profile p = profile_along_h(*subject_of(f), f.looks[0], degrees(0));
    for (const ProfilePoint& point : p.stretches.front()) {
        const double h = in_degrees(point.along);
        INFO(h);
        REQUIRE(point.whole);
        CHECK(*point.whole == Approx(3 * cos(point.along)).epsilon(1e-3));
        const double share =
            std::clamp((80 - 40 * sin(point.along) / cos(point.along)) / 60, 0.0, 1.0);
        CHECK(point.figure == Approx(3 * cos(point.along) * share).margin(0.01));
        CHECK(point.threshold == 0.3);
    }
}

TEST_CASE("where nothing was measured the charts of light have no figure", "[drawing]")
{
    const Findings f = light_behind_knife_edge(at_least_cd(0.3), 60);
    const auto s = subject_of(f);
    CHECK(s->most() == Approx(3));
    const Profile p = profile_along_h(*s, f.looks[0], degrees(0));
    REQUIRE(p.stretches.size() == 1);
    CHECK(p.last() == degrees(60));
    CHECK(!titles(f).empty());
    CHECK(charted_words(Charted::light_left, std::nan("")) == "not measured");
}

TEST_CASE("where the most is asked the lamp's own light is charted", "[drawing]")
{
    const Findings f = light_behind_knife_edge(MostIntensity{candelas(2)});
    const auto s = subject_of(f);
    CHECK(s->charted == Charted::own_light);
    CHECK(s->worst_figure == Approx(3));
    CHECK(s->worst_margin == Approx(-1));
    CHECK(titles(f).front() == "Light by direction");
}
