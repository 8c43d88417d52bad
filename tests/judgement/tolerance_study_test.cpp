#include "judgement/tolerance_study.h"

#include "judgement/build_moves.h"
#include "judgement/made_rules.h"
#include "judgement/normal_quantile.h"
#include "machine/stop.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace glim;
using namespace glim::shapes;

namespace {

// A lit plate of 60 x 40 mm at x = 0, looked at level from straight ahead. A wall at x = 40 is
// opaque from y = edge on: in view are 40 (30 + edge) mm2.
constexpr double height = 40;
double seen_mm2(double edge) { return height * (30 + edge); }

constexpr SurfaceId lens{0}, right_edge{1}, left_edge{2};

Tolerance tolerance(const std::string& name, SurfaceId surface, ToleranceWay way, double figure)
{
    Tolerance t;
    t.name = name;
    t.spread = Spread::normal;
    t.surfaces = {surface};
    t.by[static_cast<std::size_t>(way)] = figure;
    return t;
}

/// The plate behind these walls, asked for so much area straight ahead.
Study behind(std::vector<TriangleMesh> walls, double needed_mm2, std::vector<Tolerance> tolerances)
{
    RuleRow row = made_row("row", LeastArea{square_millimetres(needed_mm2)}, 0, 0, 0, 0);
    Study study =
        asking(lamp_behind(plate(Point::Zero(), 60, height), std::move(walls)), "row", {row});
    study.variation.tolerances = std::move(tolerances);
    study.variation.task.builds = 4096;
    return study;
}

TriangleMesh opaque_from(double edge_y) { return wall(40, edge_y, 300, -300, 300); }
TriangleMesh opaque_to(double edge_y) { return wall(40, -300, edge_y, -300, 300); }

ToleranceFindings found_of(const Study& study, unsigned threads = 0)
{
    return study_tolerances(Session(study), {.threads = threads, .stop = {}, .progress = {}});
}

/// Areas are sampled: rims along 40 mm to a tenth of a millimetre on the mean.
constexpr double area_accuracy = 4;

} // namespace

TEST_CASE("the share of builds of a knife edge is that of the normal distribution", "[judgement]")
{
    // Closed form: met where edge + e >= 10, e normal with sigma 0.8.
    for (const double spare : {1.0, 0.3, -0.5}) {
        const ToleranceFindings found =
            found_of(behind({opaque_from(10 + spare)}, seen_mm2(10),
                            {tolerance("edge", right_edge, ToleranceWay::outboard, 0.8)}));
        const double expected = normal_share_below(spare / 0.8);
        INFO(spare << ": " << expected);
        CHECK(found.builds == 4096);
        CHECK(found.checks.at(0).share.share == Approx(expected).margin(0.02));
        CHECK(found.checks.at(0).share.low < expected);
        CHECK(found.checks.at(0).share.high > expected);
        const ToleratedVerdict& verdict = found.verdicts.at(0);
        CHECK(verdict.as_drawn_mm2 == Approx(seen_mm2(10 + spare)).margin(area_accuracy));
        CHECK(verdict.spread.mean == Approx(seen_mm2(10 + spare)).margin(area_accuracy));
        CHECK(verdict.spread.standard_deviation == Approx(height * 0.8).epsilon(0.02));
    }
}

TEST_CASE("two edges share the variance as their squares do", "[judgement]")
{
    // In view: 40 (right - left); variances 40^2 (1.2^2, 0.6^2): shares 0.8 and 0.2.
    const ToleranceFindings found =
        found_of(behind({opaque_from(15), opaque_to(-15)}, seen_mm2(-3),
                        {tolerance("right", right_edge, ToleranceWay::outboard, 1.2),
                         tolerance("left", left_edge, ToleranceWay::outboard, 0.6)}));
    REQUIRE(found.contributors.size() == 2);
    const std::vector<VarianceShare>& shares = found.verdicts.at(0).contributions;
    REQUIRE(shares.size() == 2);
    for (const auto& [share, expected] : {std::pair(shares[0], 0.8), {shares[1], 0.2}}) {
        CHECK(share.first.value == Approx(expected).margin(0.05));
        CHECK(share.total.value == Approx(expected).margin(0.05));
        CHECK(share.total.low < expected + 0.02);
        CHECK(share.total.high > expected - 0.02);
    }
}

TEST_CASE("the worst stack-up takes every edge inward", "[judgement]")
{
    // Limits of +-1 and +-2: at worst 40 (30 - 1 - 2) mm2 stay in view.
    Tolerance right = tolerance("right", right_edge, ToleranceWay::outboard, 1);
    Tolerance left = tolerance("left", left_edge, ToleranceWay::outboard, 2);
    right.spread = Spread::uniform;
    left.spread = Spread::limits;
    const ToleranceFindings found =
        found_of(behind({opaque_from(15), opaque_to(-15)}, seen_mm2(-3), {right, left}));
    const std::optional<StackUp>& worst = found.verdicts.at(0).worst;
    REQUIRE(worst);
    // Both inboard: each edge stands on its own side of the median plane.
    CHECK(worst->deviations == std::vector<double>{-1, -2});
    CHECK(worst->figure == Approx(height * 27).margin(area_accuracy));
    CHECK(worst->every_corner);
    CHECK(worst->looked_at == 4);
}

TEST_CASE("a stack-up of many tolerances is found by the best change each time", "[judgement]")
{
    // Twelve shares of the same edge: 2^12 corners are too many to look at all.
    std::vector<Tolerance> many;
    for (int i = 0; i < 12; ++i) {
        many.push_back(tolerance("t" + std::to_string(i), right_edge, ToleranceWay::outboard, 0.1));
        many.back().spread = Spread::uniform;
    }
    Study study = behind({opaque_from(15)}, seen_mm2(10), many);
    study.variation.task.builds = 256;
    const ToleranceFindings found = found_of(study);
    const std::optional<StackUp>& worst = found.verdicts.at(0).worst;
    REQUIRE(worst);
    CHECK_FALSE(worst->every_corner);
    CHECK(worst->deviations == std::vector<double>(12, -0.1));
    CHECK(worst->figure == Approx(seen_mm2(15 - 1.2)).margin(area_accuracy));
}

TEST_CASE("without tolerances the share is all or nothing", "[judgement]")
{
    for (const double needed : {seen_mm2(9), seen_mm2(11)}) {
        for (const double figure : {-1.0, 0.0}) {
            std::vector<Tolerance> none;
            if (figure == 0)
                none = {tolerance("edge", right_edge, ToleranceWay::outboard, 0)};
            const ToleranceFindings found = found_of(behind({opaque_from(10)}, needed, none));
            const ShareOfBuilds& share = found.checks.at(0).share;
            CHECK(share.share == (needed < seen_mm2(10) ? 1 : 0));
            CHECK(share.low == share.share);
            CHECK(share.high == share.share);
        }
    }
}

TEST_CASE("doubling the tolerance of an edge that is met as drawn never raises the share",
          "[judgement]")
{
    double before = 2;
    for (double figure = 0.1; figure < 4; figure *= 2) {
        const double share =
            found_of(behind({opaque_from(11)}, seen_mm2(10),
                            {tolerance("edge", right_edge, ToleranceWay::outboard, figure)}))
                .checks.at(0)
                .share.share;
        CHECK(share <= before);
        before = share;
    }
}

TEST_CASE("what moves lamp and edge alike changes nothing", "[judgement]")
{
    Tolerance both = tolerance("module", right_edge, ToleranceWay::outboard, 3);
    both.surfaces = {lens, right_edge};
    const ToleranceFindings found = found_of(behind({opaque_from(10)}, seen_mm2(9.8), {both}));
    CHECK(found.checks.at(0).share.share == 1);
    CHECK(found.verdicts.at(0).spread.standard_deviation < 0.01);
    Tolerance own = tolerance("lens", lens, ToleranceWay::outboard, 1);
    // Closed form: the lens strays against the edge as the edge would against the lens.
    const ToleranceFindings with_own =
        found_of(behind({opaque_from(10)}, seen_mm2(9.8), {both, own}));
    CHECK(with_own.verdicts.at(0).spread.standard_deviation == Approx(height).epsilon(0.02));
    CHECK(with_own.checks.at(0).share.share == Approx(normal_share_below(0.2)).margin(0.02));
}

TEST_CASE("a lens that turns shows the cosine of its turn", "[judgement]")
{
    Tolerance turning = tolerance("lens", lens, ToleranceWay::turn, 5);
    turning.spread = Spread::uniform;
    turning.about = Point::Zero();
    const ToleranceFindings found = found_of(behind({opaque_from(200)}, 2000, {turning}));
    const std::optional<StackUp>& worst = found.verdicts.at(0).worst;
    REQUIRE(worst);
    CHECK(worst->figure == Approx(60 * height * cos(degrees(5))).epsilon(1e-6));
    CHECK(found.verdicts.at(0).spread.most == Approx(60 * height).epsilon(1e-4));
}

TEST_CASE("a build is what a check of bodies moved likewise finds", "[judgement]")
{
    Tolerance module = tolerance("module", lens, ToleranceWay::tilt, 1.5);
    module.surfaces = {lens, right_edge};
    module.by[static_cast<std::size_t>(ToleranceWay::forward)] = 2;
    module.about = Point(-50, 10, 20);
    module.level = 1;
    Tolerance own = tolerance("lens", lens, ToleranceWay::up, 1.5);
    own.by[static_cast<std::size_t>(ToleranceWay::roll)] = 2;
    own.about = Point(0, 5, 0);
    RuleRow row = made_row("row", LeastArea{square_millimetres(500)}, -20, 45, -10, 10);
    Study study =
        asking(lamp_behind(dome(40, 32), {opaque_from(12), box({45, -70, -60}, {70, -5, -15})}),
               "row", {row});
    study.variation.tolerances = {module, own,
                                  tolerance("block", left_edge, ToleranceWay::outboard, 1)};
    study.variation.task.builds = 64;
    const ToleranceFindings found = found_of(study);
    const ToleratedVerdict& verdict = found.verdicts.at(0);
    REQUIRE(verdict.worst);
    const BuildMoves moves(study, found.factors);
    const BuildPlaces places = moves.places(verdict.worst->deviations);
    Session session(study);
    for (const SurfaceId s : study.surfaces.ids())
        session.place(s, places.at[s]);
    const Findings checked = session.check(session.all_checks(), study.variation.task.step, {});
    // Sampled coarsely against exactly: corners of shadows, and a dome of facets.
    CHECK(verdict.worst->figure ==
          Approx(in_mm2(checked.checks[0].deciding_verdict().least_visible)).margin(8));
}

TEST_CASE("a profile tolerance moves the sides of a box", "[judgement]")
{
    // The block's side at y = 12.3 moves by the offset: in view 40 (42.3 - e), e normal.
    Tolerance profile = tolerance("profile", right_edge, ToleranceWay::profile, 0.5);
    const ToleranceFindings found =
        found_of(behind({box({30, 12.3, -100}, {60, 200, 100})}, seen_mm2(11.8), {profile}));
    CHECK(found.verdicts.at(0).spread.standard_deviation == Approx(height * 0.5).epsilon(0.03));
    CHECK(found.checks.at(0).share.share == Approx(normal_share_below(1)).margin(0.02));
    CHECK(found.profile_step <= millimetres(0.05));
}

TEST_CASE("the tolerance needed for a share is that of the normal distribution", "[judgement]")
{
    // Met where e >= -1: for 97.7 % sigma has to be 0.5, 1.25 times the 0.4 of the study.
    Study study = behind({opaque_from(11)}, seen_mm2(10),
                         {tolerance("edge", right_edge, ToleranceWay::outboard, 0.4)});
    study.variation.task.asked = 0;
    study.variation.task.share = normal_share_below(2);
    const ToleranceFindings found = found_of(study);
    REQUIRE(found.needed);
    REQUIRE(found.needed->factor);
    CHECK(*found.needed->factor == Approx(1.25).margin(0.1));
    CHECK_FALSE(found.needed->at_least);
    // Out of reach where another tolerance alone breaks it.
    study.variation.tolerances.push_back(tolerance("lens", lens, ToleranceWay::outboard, 5));
    const ToleranceFindings beyond = found_of(study);
    REQUIRE(beyond.needed);
    CHECK_FALSE(beyond.needed->factor);
}

TEST_CASE("rows of obstacles are counted by what is hidden", "[judgement]")
{
    // Nothing is hidden while the wall's edge stays beyond 30: as drawn 1 mm beyond, sigma 1.
    RuleRow row = made_row("row", NoObstacle{}, 0, 0, 0, 0);
    Study study =
        asking(lamp_behind(plate(Point::Zero(), 60, height), {opaque_from(31)}), "row", {row});
    study.variation.tolerances = {tolerance("edge", right_edge, ToleranceWay::outboard, 1)};
    const ToleranceFindings found = found_of(study);
    CHECK_FALSE(found.verdicts.at(0).of_area);
    CHECK(found.checks.at(0).share.share == Approx(normal_share_below(1)).margin(0.02));
}

TEST_CASE("builds are the same for any number of threads", "[judgement]")
{
    Study study = behind({opaque_from(11), opaque_to(-20)}, seen_mm2(-10),
                         {tolerance("right", right_edge, ToleranceWay::outboard, 1),
                          tolerance("left", left_edge, ToleranceWay::up, 1),
                          tolerance("lens", lens, ToleranceWay::forward, 1)});
    study.variation.task.builds = 512;
    const ToleranceFindings one = found_of(study, 1), two = found_of(study, 2);
    CHECK(one.verdicts.at(0).spread.mean == two.verdicts.at(0).spread.mean);
    CHECK(one.verdicts.at(0).spread.histogram.counts == two.verdicts.at(0).spread.histogram.counts);
    CHECK(one.checks.at(0).share.met == two.checks.at(0).share.met);
    REQUIRE(one.verdicts.at(0).contributions.size() == 3);
    for (std::size_t i = 0; i < 3; ++i)
        CHECK(one.verdicts.at(0).contributions[i].total.value ==
              two.verdicts.at(0).contributions[i].total.value);
    Study other = study;
    other.variation.task.seed = 2;
    CHECK(found_of(other).verdicts.at(0).spread.mean != one.verdicts.at(0).spread.mean);
}

TEST_CASE("stopped early, what was counted comes back as partial", "[judgement]")
{
    Study study = behind({opaque_from(11)}, seen_mm2(10),
                         {tolerance("edge", right_edge, ToleranceWay::outboard, 0.8)});
    std::stop_source stop;
    const Session session(study);
    const ToleranceFindings found = study_tolerances(
        session, {.threads = 1, .stop = stop.get_token(), .progress = [&](std::size_t done, auto) {
                      if (done > 200)
                          stop.request_stop();
                  }});
    CHECK(found.partial);
    CHECK(found.builds >= 200);
    CHECK(found.builds < 4096);
    CHECK(found.verdicts.at(0).contributions.empty());
    stop.request_stop();
    CHECK_THROWS_AS(
        study_tolerances(session, {.threads = 1, .stop = stop.get_token(), .progress = {}}),
        Stopped);
}
