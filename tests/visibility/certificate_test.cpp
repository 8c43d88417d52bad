// Bounds that hold: scenes in which something slips between all corners, and scenes in which the
// bounds must be exact. The pitch is 1 mm, the touch 0.05 mm, unless said otherwise. What the
// bounds are held against is ExactView, which knows no corners and no contours.

#include "geometry/weld.h"
#include "shapes/rough_scene.h"
#include "shapes/small_study.h"
#include "units/trig.h"
#include "visibility/sweep.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

/// Sums of some thousand cells in double.
constexpr double summing_mm2 = 1e-7;

constexpr std::array<std::pair<double, double>, 6> some_directions = {
    {{-45, 0}, {-45, 15}, {0, 0}, {33, -10}, {80, 15}, {7, 3}}};

TriangleMesh lens() { return plate(Point::Zero(), 30, 20); }

/// Every facet with corners of its own: no edge is shared.
TriangleMesh unwelded(const TriangleMesh& mesh)
{
    TriangleMesh apart;
    for (std::uint32_t f = 0; f < mesh.facets.size(); ++f) {
        for (int i = 0; i < 3; ++i)
            apart.points.push_back(mesh.corner(f, i));
        apart.facets.push_back({3 * f, 3 * f + 1, 3 * f + 2});
    }
    return apart;
}

TriangleMesh every_second_turned_over(TriangleMesh mesh)
{
    for (std::size_t f = 0; f < mesh.facets.size(); f += 2)
        std::swap(mesh.facets[f][1], mesh.facets[f][2]);
    return mesh;
}

/// The certified bounds hold both exact areas, and stand in the order that they promise.
SeenArea check_bounds(const Watched& lamp, double h, double v)
{
    CAPTURE(h, v);
    const SeenArea seen = lamp.certified(h, v);
    CHECK(seen.certified);
    const ExactArea exact = lamp.exact().toward(lamp.toward(h, v));
    const double slack = in_mm2(exact.rounding) + summing_mm2;
    CHECK(in_mm2(seen.low) <= in_mm2(exact.visible) + slack);
    CHECK(in_mm2(seen.high) >= in_mm2(exact.visible) - slack);
    const ExactHidden hidden = lamp.exact().hidden_toward(lamp.toward(h, v));
    const double hidden_slack = in_mm2(hidden.rounding) + summing_mm2;
    CHECK(in_mm2(seen.hidden_low) <= in_mm2(hidden.hidden) + hidden_slack);
    CHECK(in_mm2(seen.hidden_high) >= in_mm2(hidden.hidden) - hidden_slack);
    CHECK(seen.low <= seen.visible);
    CHECK(seen.visible <= seen.high);
    CHECK(seen.visible <= seen.approved);
    CHECK(seen.approved <= seen.lens);
    return seen;
}

/// Nothing is left open.
void check_exact(const SeenArea& seen, double expected_mm2)
{
    CHECK(in_mm2(seen.low) == Approx(expected_mm2).margin(summing_mm2));
    CHECK(in_mm2(seen.high) == Approx(expected_mm2).margin(summing_mm2));
    CHECK(in_mm2(seen.visible) == Approx(expected_mm2).margin(summing_mm2));
}

} // namespace

TEST_CASE("a bar that slips between all corners is inside certified bounds", "[visibility]")
{
    // 0.2 mm wide, upright, between two columns of corners. Every corner is lit.
    const Watched lamp(lamp_behind(lens(), {wall(40, 5.4, 5.6, -100, 100)}));
    const SeenArea corners_alone = lamp.sampled(0, 0);
    CHECK_FALSE(corners_alone.certified);
    CHECK(in_mm2(corners_alone.low) == Approx(600));
    const SeenArea seen = check_bounds(lamp, 0, 0);
    CHECK(lamp.exact_mm2(0, 0) == Approx(600 - 0.2 * 20));
    CHECK(in_mm2(seen.low) < 600 - 4);
    CHECK(in_mm2(seen.high) == Approx(600));
    CHECK(in_mm2(seen.hidden_high) > 4);
    CHECK(in_mm2(seen.hidden_low) == 0);
    // Nothing but the cells that the bar crosses is left open: a column of them, 1 mm wide.
    CHECK(in_mm2(seen.missed) == Approx(in_mm2(seen.high - seen.low)));
    CHECK(in_mm2(seen.missed) < 2 * 20);
    for (const auto& [h, v] : some_directions)
        check_bounds(lamp, h, v);
}

TEST_CASE("a slit between two plates is inside certified bounds", "[visibility]")
{
    const Watched lamp(
        lamp_behind(lens(), {wall(40, -200, 5.4, -100, 100), wall(40, 5.6, 200, -100, 100)}));
    const SeenArea seen = check_bounds(lamp, 0, 0);
    CHECK(in_mm2(lamp.sampled(0, 0).high) == 0);
    CHECK(lamp.exact_mm2(0, 0) == Approx(0.2 * 20));
    CHECK(in_mm2(seen.high) > 4);
    CHECK(in_mm2(seen.hidden_low) > 600 - 2 * 20);
    CHECK(in_mm2(seen.hidden_low) < 600 - 4);
}

TEST_CASE("a tip that enters one cell is inside certified bounds", "[visibility]")
{
    TriangleMesh wedge;
    wedge.points = {{10, 0.4, 0.3}, {10, 0.3, 60}, {10, 0.5, 60}};
    wedge.facets = {{0, 1, 2}};
    const Watched lamp(lamp_behind(lens(), {wedge}));
    for (const auto& [h, v] : some_directions)
        check_bounds(lamp, h, v);
    CHECK(in_mm2(lamp.certified(0, 0).missed) > 0);
}

TEST_CASE("where nothing comes near, certified bounds are one exact figure", "[visibility]")
{
    const Watched lamp(lamp_behind(lens(), {wall(40, 100, 300, -100, 100)}));
    for (const double h : {0.0, -45.0, 30.0}) {
        const SeenArea seen = check_bounds(lamp, h, 0);
        check_exact(seen, 600 * cos(degrees(h)));
        CHECK(in_mm2(seen.hidden_high) == 0);
        CHECK(seen.approved == seen.lens);
        CHECK(in_mm(seen.rim) == 0);
        CHECK(in_mm2(seen.missed) == 0);
    }
}

TEST_CASE("what a wall hides wholly is hidden exactly", "[visibility]")
{
    const Watched lamp(lamp_behind(lens(), {wall(40, -300, 300, -300, 300)}));
    const SeenArea seen = check_bounds(lamp, 0, 0);
    check_exact(seen, 0);
    CHECK(in_mm2(seen.hidden_low) == Approx(600));
    CHECK(in_mm2(seen.hidden_high) == Approx(600));
}

TEST_CASE("a straight rim leaves one row of cells open", "[visibility]")
{
    // The knife edge runs over the middle of a column: 20 cells' pairs of 1 mm2 together.
    const Watched lamp(lamp_behind(lens(), {wall(40, 5.5, 300, -300, 300)}));
    const SeenArea seen = check_bounds(lamp, 0, 0);
    CHECK(in_mm2(seen.high - seen.low) <= 2 * 20);
    CHECK(in_mm(seen.rim) == Approx(20).epsilon(0.05));
}

TEST_CASE("an obstacle that pierces the lit face is inside certified bounds", "[visibility]")
{
    // A blade of 0.3 mm through the face, aslant; its foot has no contour there.
    TriangleMesh blade;
    blade.points = {{-5, 3.3, 2.2}, {12, 4.4, 2.3}, {12, 4.1, 6.6}, {-5, 3.0, 6.5}};
    blade.facets = {{0, 1, 2}, {0, 2, 3}};
    const Watched lamp(lamp_behind(lens(), {blade}));
    for (const auto& [h, v] : some_directions)
        check_bounds(lamp, h, v);
    // A plate that leans through the face hides on one side of the line where it pierces it.
    const Watched leaning(lamp_behind(lens(), {turned(plate(Point::Zero(), 80, 80), degrees(20))}));
    for (const auto& [h, v] : some_directions)
        check_bounds(leaning, h, v);
    CHECK(in_mm2(leaning.certified(0, 0).low) > 250);
}

TEST_CASE("a plate within touch hides nothing, beyond it everything, at it either", "[visibility]")
{
    const auto before_by = [](double distance) {
        return Watched(lamp_behind(lens(), {wall(distance, -100, 100, -100, 100)}));
    };
    check_exact(check_bounds(before_by(0), 0, 0), 600);
    check_exact(check_bounds(before_by(0.049), 0, 0), 600);
    check_exact(check_bounds(before_by(0.051), 0, 0), 0);
    const SeenArea either = check_bounds(before_by(0.05), 0, 0);
    CHECK(in_mm2(either.low) == 0);
    CHECK(in_mm2(either.high) == Approx(600));
    for (const double distance : {0.0, 0.02, 0.049, 0.05, 0.051, 0.2, 0.9})
        for (const auto& [h, v] : some_directions)
            check_bounds(before_by(distance), h, v);
}

TEST_CASE("corners that share a longer skip with a slanted facet do not hide what is near",
          "[visibility]")
{
    // Two facets at 88 degrees to each other: seen along +x, the second skips 1 mm of the way, and
    // so do the corners on their common edge. A ledge stands 0.4 mm before the first facet.
    TriangleMesh corner;
    corner.points = {{0, 0, -10}, {0, 0, 10}, {0, 20, 10}, {0, 20, -10}};
    const double back = 20 * tan(degrees(88));
    corner.points.emplace_back(-back, -20, -10);
    corner.points.emplace_back(-back, -20, 10);
    corner.facets = {{0, 3, 2}, {0, 2, 1}, {4, 0, 1}, {4, 1, 5}};
    const Watched lamp(lamp_behind(corner, {wall(0.4, -0.1, 0.9, -30, 30)}));
    check_bounds(lamp, 0, 0);
    for (double h = -1; h <= 1; h += 0.25)
        check_bounds(lamp, h, 0);
    // Behind the ledge the first column of cells is dark for the exact area, and its corners on
    // the edge skip the ledge.
    CHECK(lamp.exact_mm2(0, 0) < 800 - 0.9 * 20 + 1e-3);
}

TEST_CASE("a folded lens that hides itself hides nothing that counts as hidden by others",
          "[visibility]")
{
    TriangleMesh folded;
    for (const double z : {-10.0, 10.0})
        for (const Point& p : {Point(0, -12, z), Point(9, -4, z), Point(-2, 4, z), Point(7, 12, z)})
            folded.points.push_back(p);
    for (std::uint32_t i = 0; i < 3; ++i) {
        folded.facets.push_back({i, i + 1, i + 5});
        folded.facets.push_back({i, i + 5, i + 4});
    }
    const Watched lamp(lamp_alone(folded));
    bool hides_itself = false;
    for (const auto& [h, v] : some_directions) {
        const SeenArea seen = check_bounds(lamp, h, v);
        CHECK(in_mm2(seen.hidden_low) == 0);
        CHECK(in_mm2(seen.hidden_high) == 0);
        CHECK(seen.approved == seen.visible);
        hides_itself = hides_itself || in_mm2(seen.low) < in_mm2(seen.lens) - 10;
    }
    CHECK(hides_itself);
    // A ball before it, not approved.
    const Watched behind(lamp_behind(folded, {moved(ball(4, 20), {40, 2, 0})}));
    for (const auto& [h, v] : some_directions)
        check_bounds(behind, h, v);
    CHECK(in_mm2(behind.certified(7, 3).hidden_high) > 0);
}

TEST_CASE("smooth lenses, hollow and bulging, leave no cell open", "[visibility]")
{
    const TriangleMesh bulging =
        moved(cylinder_wall(40, 20, degrees(-40), degrees(40), 20), {-40, 0, 0});
    const TriangleMesh hollow =
        turned_over(moved(cylinder_wall(40, 20, degrees(140), degrees(220), 20), {40, 0, 0}));
    for (const TriangleMesh& lit : {bulging, hollow}) {
        const Watched lamp(lamp_alone(lit));
        for (const double h : {-30.0, 0.0, 13.0}) {
            const SeenArea seen = check_bounds(lamp, h, 5);
            check_exact(seen, in_mm2(seen.lens));
        }
        for (const auto& [h, v] : some_directions)
            check_bounds(lamp, h, v);
    }
}

TEST_CASE("what hides is not changed by seams, winding or repetition", "[visibility]")
{
    const TriangleMesh wavy = welded(moved(
        turned(cylinder_wall(30, 60, degrees(-60), degrees(60), 24), degrees(20)), {25, 18, 0}));
    for (const TriangleMesh& obstacle :
         {wavy, unwelded(wavy), every_second_turned_over(wavy), joined(wavy, wavy)}) {
        const Watched lamp(lamp_behind(lens(), {obstacle}));
        for (const auto& [h, v] : some_directions)
            check_bounds(lamp, h, v);
    }
    // Seams draw no rim: with consistent winding or without, the same cells are open.
    const Watched even(lamp_behind(lens(), {wavy}));
    const Watched uneven(lamp_behind(lens(), {every_second_turned_over(wavy)}));
    for (const auto& [h, v] : some_directions) {
        CHECK(even.certified(h, v).low == uneven.certified(h, v).low);
        CHECK(even.certified(h, v).high == uneven.certified(h, v).high);
    }
}

TEST_CASE("a facet that a file repeats draws no rim of its own", "[visibility]")
{
    const TriangleMesh once = welded(plate({40, 0, 0}, 300, 300, 40));
    TriangleMesh twice = once;
    for (const Facet& f : once.facets)
        twice.facets.push_back({f[1], f[0], f[2]});
    const Watched lamp(lamp_behind(lens(), {twice}));
    check_exact(check_bounds(lamp, 0, 0), 0);
    // The same cover as another body, edge on edge.
    const Watched covered(lamp_behind(lens(), {once, once}));
    check_exact(check_bounds(covered, 3, 2), 0);
}

TEST_CASE("what the approved hide is neither hidden by others nor free of them", "[visibility]")
{
    // A hood over the upper half, approved; behind it, and a little below it, an unapproved bar.
    Study study =
        lamp_behind(lens(), {wall(10, -100, 100, 0.5, 100), wall(20, 3.5, 100, -3.5, 100)});
    study.lamps[LampId{0}].approved_with = {SurfaceId{1}};
    const Watched lamp(study);
    const SeenArea seen = check_bounds(lamp, 0, 0);
    const ExactHidden hidden = lamp.exact().hidden_toward(lamp.toward(0, 0));
    CHECK(in_mm2(hidden.hidden) == Approx(11.5 * 4));
    // A cell of 1 mm to either side of its rim, which is 31 mm long.
    CHECK(in_mm2(seen.hidden_low) >= 46 - 31);
    CHECK(in_mm2(seen.hidden_high) <= 46 + 31);
    for (const auto& [h, v] : some_directions)
        check_bounds(lamp, h, v);
}

TEST_CASE("certified bounds hold before clutter, drawn and mirrored", "[visibility]")
{
    for (int seed = 1; seed <= 4; ++seed) {
        Study study =
            lamp_behind(moved(wrapped_lens(), {0, 120, 0}), clutter(seed, 40), MirrorRule::yes);
        study.sampling.feature = millimetres(3);
        for (std::uint32_t s = 1; s <= 40; s += 3)
            study.lamps[LampId{0}].approved_with.push_back(SurfaceId{s});
        const Watched lamp(study);
        for (const auto& [h, v] : some_directions)
            check_bounds(lamp, h, v);
    }
}

TEST_CASE("a mirrored lamp's bounds hold the drawn one's areas", "[visibility]")
{
    Study study = lamp_behind(
        moved(wrapped_lens(), {0, 600, 0}),
        {welded(moved(ball(15, 30), {60, 610, 4})), wall(200, 500, 640, -90, 10)}, MirrorRule::yes);
    study.surfaces[SurfaceId{0}].mirror = MirrorRule::yes;
    const PreparedScene scene(study);
    const Workers one{.threads = 1, .stop = {}, .progress = {}};
    const LampStanding drawn{LampId{0}, false};
    const LampStanding twin{LampId{0}, true};
    const LampView view = scene.view_of(twin, study.sampling);
    const ExactView exact = scene.exact_view_of(drawn, study.sampling.touch);
    const LampFrame mirrored{Direction::x(), -Direction::y(), Direction::z()};
    for (const auto& [h, v] : some_directions) {
        const Bearing bearing{degrees(h), degrees(v)};
        const std::array toward = {direction_of(bearing, mirrored)};
        const Certificate certificate = scene.certificate_of(twin, view, toward, one);
        const SeenArea seen = seen_toward(view, toward[0], &certificate);
        const Direction other_way = direction_of(bearing, LampFrame{});
        // The mirror image is rounded to float, some 1e-4 mm along 300 mm of rim.
        CHECK(seen.low <= exact.toward(other_way).visible + square_millimetres(0.03));
        CHECK(seen.high >= exact.toward(other_way).visible - square_millimetres(0.03));
        CHECK(seen.hidden_low <= exact.hidden_toward(other_way).hidden + square_millimetres(0.03));
        CHECK(seen.hidden_high >= exact.hidden_toward(other_way).hidden - square_millimetres(0.03));
        CHECK(in_mm2(seen.high - seen.low) < 0.1 * in_mm2(seen.lens));
    }
}

TEST_CASE("a certificate knows which directions it was made for", "[visibility]")
{
    const Watched lamp(lamp_behind(lens(), {wall(40, 5.4, 5.6, -100, 100)}));
    const std::array ahead = {lamp.toward(3, 2)};
    const Certificate certificate = lamp.certificate(ahead);
    CHECK(certificate.covers(ahead[0]));
    CHECK(certificate.covers(lamp.toward(4, 3)));
    CHECK_FALSE(certificate.covers(lamp.toward(40, 3)));
    CHECK(seen_toward(lamp.view(), lamp.toward(4, 3), &certificate).certified);
    CHECK_FALSE(seen_toward(lamp.view(), lamp.toward(40, 3), &certificate).certified);
}

TEST_CASE("bounds of two lamps together are certified if both are", "[visibility]")
{
    const Watched lamp(lamp_behind(lens(), {wall(40, 5.4, 5.6, -100, 100)}));
    SeenArea both = lamp.certified(0, 0);
    const SeenArea one = both;
    both += one;
    CHECK(both.certified);
    CHECK(both.hidden_high == 2 * one.hidden_high);
    CHECK(both.missed == 2 * one.missed);
    CHECK(both.rim == 2 * one.rim);
    CHECK(both.outline == 2 * one.outline);
    both += lamp.sampled(0, 0);
    CHECK_FALSE(both.certified);
    CHECK(SeenArea{}.certified);
}

TEST_CASE("a certified sweep is the same for any number of threads", "[visibility]")
{
    const Watched lamp(lamp_behind(wrapped_lens(), clutter(19, 40)));
    std::vector<Direction> directions;
    for (int h = -45; h <= 80; h += 5)
        directions.push_back(lamp.toward(h, 3));
    const Certificate certificate = lamp.certificate(directions);
    const auto with = [&](unsigned threads) {
        return sweep(lamp.view(), directions,
                     Workers{.threads = threads, .stop = {}, .progress = {}}, &certificate);
    };
    const auto one = with(1);
    const auto four = with(4);
    for (std::size_t i = 0; i < directions.size(); ++i) {
        CHECK(one[i].low == four[i].low);
        CHECK(one[i].high == four[i].high);
        CHECK(one[i].hidden_low == four[i].hidden_low);
        CHECK(one[i].hidden_high == four[i].hidden_high);
        CHECK(one[i].rim == four[i].rim);
    }
}
