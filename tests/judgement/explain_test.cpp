#include "judgement/explain.h"

#include "judgement/check_study.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

/// Asks the study's lamp for so much area, level, from h0 to h1.
Study asking(Study study, double h0, double h1, double mm2)
{
    RuleRow row;
    row.id = "row";
    row.citation = {Provenance::memory, "invented for this test", ""};
    row.field = {{{degrees(h0), degrees(h1), degrees(0), degrees(0)}}};
    row.criterion = LeastArea{square_millimetres(mm2)};
    RuleTable table;
    table.name = "test";
    table.rows = {row};
    study.tables.push_back(std::move(table));
    study.checks.push_back({"ask", 0, "row", study.lamps.ids()});
    return study;
}

const LampVerdict& only_verdict(const Findings& findings)
{
    return findings.checks.front().rows.front().lamps.front();
}

/// Strips from y = 50 to 60, 80 and 500, 40 mm before a lens of 60 x 40 mm. Toward 45 degrees a ray
/// from y on the lens meets them at y + 40, so the first two take 10 mm each of the lens's width.
TriangleMesh strips()
{
    TriangleMesh all;
    for (const auto& [from, to] : {std::pair{50.0, 60.0}, {60, 80}, {80, 500}})
        all = joined(all, wall(40, from, to, -300, 300));
    return all;
}
const double ten_mm_of_lens = 10 * 40 * cos(degrees(45));

/// Corners on the line between two strips stand for a cell of 1 mm along it.
constexpr double a_cell_wide = 40;

void check_box(const Box& box, const Point& least, const Point& most)
{
    CHECK((box.least - least).norm() < 1e-9);
    CHECK((box.most - most).norm() < 1e-9);
}

double of_strip(const Blocker& blocker, std::uint32_t strip)
{
    Area sum;
    for (const FacetShare& f : blocker.facets)
        if (f.facet / 2 == strip)
            sum += f.at_worst.taken;
    return in_mm2(sum);
}

} // namespace

TEST_CASE("facets in the way take what is hidden, and their patch is a box known on paper",
          "[judgement]")
{
    const Findings f =
        check_study(asking(lamp_behind(plate(Point::Zero(), 60, 40), {strips()}), 45, 45, 1250));
    const LampVerdict& v = only_verdict(f);
    REQUIRE(v.outcome == Outcome::not_met);
    REQUIRE(v.blockers.size() == 1);
    const Blocker& blocker = v.blockers[0];
    CHECK(of_strip(blocker, 0) == Approx(ten_mm_of_lens).margin(a_cell_wide));
    CHECK(of_strip(blocker, 1) == Approx(ten_mm_of_lens).margin(a_cell_wide));
    CHECK(of_strip(blocker, 2) == 0);
    check_box(blocker.patch, {40, 50, -300}, {40, 80, 300});
    for (const FacetShare& share : blocker.facets) {
        REQUIRE(share.mean.has_value()); // one direction, which fails
        CHECK(in_mm2(share.mean->taken) == in_mm2(share.at_worst.taken));
        CHECK(in_mm2(share.at_worst.first) == in_mm2(share.at_worst.taken));
        CHECK(share.centre.x() == 40);
    }
    Area sum;
    for (const FacetShare& share : blocker.facets)
        sum += share.at_worst.taken;
    CHECK(in_mm2(sum) == Approx(in_mm2(blocker.taken_at_worst())));
}

TEST_CASE("facets are ranked by what they take on the mean of the directions that fail",
          "[judgement]")
{
    const Findings f =
        check_study(asking(lamp_behind(plate(Point::Zero(), 60, 40), {strips()}), 40, 60, 1250));
    const Blocker& blocker = only_verdict(f).blockers.front();
    REQUIRE(blocker.facets.size() > 2);
    for (std::size_t i = 1; i < blocker.facets.size(); ++i)
        CHECK(blocker.facets[i].mean->taken <= blocker.facets[i - 1].mean->taken);
    Area mean;
    for (const FacetShare& share : blocker.facets)
        mean += share.mean->taken;
    CHECK(in_mm2(mean) == Approx(in_mm2(*blocker.taken_on_mean())));
}

TEST_CASE("a twin's facets carry the drawn one's numbers and stand on the far side", "[judgement]")
{
    const Findings f = check_study(asking(
        lamp_behind(plate(Point::Zero(), 60, 40), {strips()}, MirrorRule::yes), -45, -45, 1250));
    const LampVerdict& v = only_verdict(f);
    REQUIRE(v.blockers.size() == 1);
    CHECK(v.blockers[0].twin);
    CHECK(of_strip(v.blockers[0], 0) == Approx(ten_mm_of_lens).margin(a_cell_wide));
    check_box(v.blockers[0].patch, {40, -80, -300}, {40, -50, 300});
    for (const FacetShare& share : v.blockers[0].facets)
        CHECK(share.centre.y() < -50);
}

TEST_CASE("strays that take less than a hundredth do not widen the patch", "[judgement]")
{
    // A lens of 200 x 40 mm: a shutter takes half of it, a thread 0.8 mm wide far off 0.8 %.
    const TriangleMesh shutter = wall(10, 0, 200, -100, 100);
    const TriangleMesh thread = wall(10, -60.4, -59.6, -100, 100);
    Study study =
        asking(lamp_behind(plate(Point::Zero(), 200, 40), {joined(shutter, thread)}), 0, 0, 5000);
    study.sampling.feature = millimetres(0.5);
    const Findings f = check_study(study);
    const Blocker& blocker = only_verdict(f).blockers.front();
    CHECK(in_mm2(blocker.taken_at_worst()) == Approx(4032).margin(5));
    CHECK(blocker.facets.size() > 2);
    check_box(blocker.patch, {10, 0, -100}, {10, 200, 100});
}

TEST_CASE("where no direction fails there is no mean to tell", "[judgement]")
{
    const Findings f =
        check_study(asking(lamp_behind(plate(Point::Zero(), 60, 40), {strips()}), 45, 45, 1000));
    const LampVerdict& v = only_verdict(f);
    REQUIRE(v.outcome == Outcome::met);
    REQUIRE(v.blockers.size() == 1);
    CHECK(!v.blockers[0].mean_alone.has_value());
    CHECK(!v.blockers[0].taken_on_mean().has_value());
    CHECK(in_mm2(v.blockers[0].alone_at_worst) == Approx(2 * ten_mm_of_lens).margin(2));
    for (const FacetShare& share : v.blockers[0].facets)
        CHECK(!share.mean.has_value());
    check_box(v.blockers[0].patch, {40, 50, -300}, {40, 80, 300});
}

TEST_CASE("any number of threads blames the same facets with the same areas", "[judgement]")
{
    const Study study = asking(
        lamp_behind(plate(Point::Zero(), 60, 40), {strips()}, MirrorRule::yes), -70, 70, 1250);
    const auto one = check_study(study, {.threads = 1, .stop = {}, .progress = {}});
    const auto four = check_study(study, {.threads = 4, .stop = {}, .progress = {}});
    const auto& a = only_verdict(one).blockers;
    const auto& b = only_verdict(four).blockers;
    REQUIRE(a.size() == b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        REQUIRE(a[i].facets.size() == b[i].facets.size());
        CHECK(in_mm2(*a[i].mean_alone) == in_mm2(*b[i].mean_alone));
        for (std::size_t k = 0; k < a[i].facets.size(); ++k) {
            CHECK(a[i].facets[k].facet == b[i].facets[k].facet);
            CHECK(in_mm2(a[i].facets[k].mean->taken) == in_mm2(b[i].facets[k].mean->taken));
        }
    }
}
