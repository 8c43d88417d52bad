#include "judgement/surface_margins.h"

#include "judgement/made_rules.h"
#include "machine/stop.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;
using namespace glim::shapes;

namespace {

// A lit plate of 60 x 40 mm at x = 0, seen level from H outboard (+y). A wall at x = ahead is
// opaque from y = edge on and hides what lies beyond y = edge - ahead tan H of the plate; the rest
// is seen under cos H. These are the closed forms of a knife edge.
constexpr double height = 40;
constexpr double ahead = 40;
constexpr SurfaceId edge_wall{1}, other_wall{2};

double seen_mm2(double edge, double h_deg)
{
    return height * (30 + edge - ahead * tan(degrees(h_deg))) * cos(degrees(h_deg));
}

Study behind(std::vector<TriangleMesh> walls, Criterion criterion, double h_deg)
{
    return asking(lamp_behind(plate(Point::Zero(), 60, height), std::move(walls)), "row",
                  {made_row("row", std::move(criterion), h_deg, h_deg, 0, 0)});
}

Criterion at_least(double mm2) { return LeastArea{square_millimetres(mm2)}; }
TriangleMesh opaque_from(double edge_y) { return wall(ahead, edge_y, 300, -300, 300); }
TriangleMesh opaque_to(double edge_y) { return wall(ahead, -300, edge_y, -300, 300); }

MarginFindings margins_of(const Study& study, unsigned threads = 0)
{
    return surface_margins(study, {.checks = {0}, .step = degrees(5), .reach = millimetres(20)},
                           {.threads = threads, .stop = {}, .progress = {}});
}

const SurfaceMargin& margin(const MarginFindings& found, SurfaceId surface, MarginWay way)
{
    const auto& all = found.checks.front().margins;
    const auto it = std::find_if(all.begin(), all.end(), [&](const SurfaceMargin& m) {
        return m.surface == surface && m.way == way;
    });
    REQUIRE(it != all.end());
    return *it;
}

/// The change lies at most the promised accuracy before the move that is told.
void check_near(const std::optional<Length>& told, double mm)
{
    REQUIRE(told);
    CHECK(in_mm(*told) >= mm - 1e-3);
    CHECK(in_mm(*told) <= mm + in_mm(margin_accuracy) + 1e-3);
}

} // namespace

TEST_CASE("a knife edge may come as near as its spare area is wide", "[judgement]")
{
    for (const double h : {0.0, 20.0}) {
        const double spare_mm = 3.3;
        const MarginFindings found =
            margins_of(behind({opaque_from(10)}, at_least(seen_mm2(10 - spare_mm, h)), h));
        CHECK(found.checks.front().met);
        const SurfaceMargin& across = margin(found, edge_wall, MarginWay::outboard);
        check_near(across.against, spare_mm);
        CHECK_FALSE(across.along);
        CHECK(across.gain_mm == Approx(height * cos(degrees(h))).margin(1e-3));
    }
}

TEST_CASE("what comes forward hides more by the tangent of the view", "[judgement]")
{
    const double h = 30;
    const MarginFindings found =
        margins_of(behind({opaque_from(15)}, at_least(seen_mm2(12, h)), h));
    const SurfaceMargin& forward = margin(found, edge_wall, MarginWay::forward);
    check_near(forward.along, 3 / tan(degrees(h)));
    CHECK_FALSE(forward.against);
    CHECK(forward.gain_mm == Approx(-height * sin(degrees(h))).margin(1e-3));
    // A wall across the way looks forward or rearward: its normal offset is the same move.
    const SurfaceMargin& normal = margin(found, edge_wall, MarginWay::normal);
    CHECK(std::abs(normal.gain_mm) == Approx(height * sin(degrees(h))).margin(1e-3));
}

TEST_CASE("an edge that hides too much has to recede as far as area is missing", "[judgement]")
{
    const MarginFindings found =
        margins_of(behind({opaque_from(10)}, at_least(seen_mm2(14.2, 0)), 0));
    CHECK_FALSE(found.checks.front().met);
    CHECK(in_mm2(found.checks.front().margin) == Approx(-4.2 * height).margin(1e-3));
    const SurfaceMargin& across = margin(found, edge_wall, MarginWay::outboard);
    check_near(across.along, 4.2);
    CHECK_FALSE(across.against);
}

TEST_CASE("either edge of a slot has all of the slot's spare width", "[judgement]")
{
    // Between the edges 30 mm of the plate are seen, 25 are asked for.
    const MarginFindings found =
        margins_of(behind({opaque_from(20), opaque_to(-10)}, at_least(height * 25), 0));
    check_near(margin(found, edge_wall, MarginWay::outboard).against, 5);
    const SurfaceMargin& left = margin(found, other_wall, MarginWay::outboard);
    // On the other side of the median plane outboard is the other way.
    const auto& closing = left.gain_mm < 0 ? left.along : left.against;
    check_near(closing, 5);
    CHECK(std::abs(left.gain_mm) == Approx(height).margin(1e-3));
}

TEST_CASE("where nothing may be hidden, the margin is the way to the first line of sight",
          "[judgement]")
{
    const MarginFindings found = margins_of(behind({opaque_from(37.5)}, NoObstacle{}, 0));
    CHECK(found.checks.front().met);
    check_near(margin(found, edge_wall, MarginWay::outboard).against, 7.5);
}

TEST_CASE("a surface that no move brings before the light is idle", "[judgement]")
{
    const MarginFindings found =
        margins_of(behind({opaque_from(10), opaque_from(200)}, at_least(1000), 0));
    CHECK(found.idle == std::vector<SurfaceId>{other_wall});
}

TEST_CASE("margins are the same for any number of threads, and stop when told to", "[judgement]")
{
    const Study study = behind({opaque_from(10)}, at_least(1400), 0);
    const MarginFindings one = margins_of(study, 1);
    const MarginFindings two = margins_of(study, 2);
    REQUIRE(one.checks.front().margins.size() == two.checks.front().margins.size());
    for (std::size_t i = 0; i < one.checks.front().margins.size(); ++i) {
        CHECK(one.checks.front().margins[i].along == two.checks.front().margins[i].along);
        CHECK(one.checks.front().margins[i].gain_mm == two.checks.front().margins[i].gain_mm);
    }
    std::stop_source stop;
    stop.request_stop();
    CHECK_THROWS_AS(surface_margins(study,
                                    {.checks = {0}, .step = degrees(5), .reach = millimetres(20)},
                                    {.threads = 1, .stop = stop.get_token(), .progress = {}}),
                    Stopped);
}
