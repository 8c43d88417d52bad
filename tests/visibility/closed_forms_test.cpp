// Areas known on paper, through the whole engine: mesh in, area out. Every figure follows from
// elementary trigonometry and can be repeated by hand; where it is a theorem, its name stands
// there.

#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace glim;
using namespace glim::shapes;

namespace {

constexpr double pi = std::numbers::pi;

/// Exact areas are double arithmetic and a 1 nm grid.
constexpr double exact_mm2 = 1e-3;
/// Sampled areas: a straight rim is cut at 1/32 of cells of at most 1 mm.
constexpr double sampled_share = 0.004;

/// Both ways to the area agree with the figure on paper, and the bounds hold it.
void check_area(const Watched& lamp, double h, double v, double expected)
{
    CAPTURE(h, v, expected);
    const SeenArea seen = lamp.sampled(h, v);
    CHECK(lamp.exact_mm2(h, v) == Approx(expected).margin(exact_mm2));
    CHECK(in_mm2(seen.visible) ==
          Approx(expected).margin(sampled_share * in_mm2(seen.lens) + exact_mm2));
    CHECK(in_mm2(seen.low) <= expected + exact_mm2);
    CHECK(in_mm2(seen.high) >= expected - exact_mm2);
}

/// Walls that rise from the lit face itself lose their foot to the touch rule: a strip of
/// touch x sin along them is seen. On paper there is no such rule, so it is made small here.
Study touching_at_a_tenth_of_a_micron(TriangleMesh lit, TriangleMesh walls)
{
    Study study = lamp_behind(std::move(lit), {std::move(walls)});
    study.sampling.touch = millimetres(1e-4);
    return study;
}

} // namespace

TEST_CASE("a flat lens shows its area times cosV cosH", "[visibility]")
{
    const Watched lamp(lamp_alone(plate(Point::Zero(), 60, 40)));
    check_area(lamp, 0, 0, 2400);
    check_area(lamp, 45, 0, 2400 * 0.7071067811865476);
    check_area(lamp, 45, 15, 2400 * 0.6830127018922193);
    check_area(lamp, 80, 15, 2400 * 0.16773125949652063);
    check_area(lamp, -45, -15, 2400 * 0.6830127018922193);
}

TEST_CASE("a flat lens of 1830.13 mm2 shows 1250 mm2 at 45 inboard and 15 up", "[visibility]")
{
    const Watched lamp(lamp_alone(plate(Point::Zero(), 50, 1830.1270189 / 50)));
    check_area(lamp, -45, 15, 1250);
    const Watched side(lamp_alone(plate(Point::Zero(), 100, 71.9846310)));
    check_area(side, 80, 0, 1250);
}

TEST_CASE("a lens turned outboard by 30 or 40 degrees needs 5000 or 14848 mm2 for the far side",
          "[visibility]")
{
    const Watched thirty(lamp_alone(turned(plate(Point::Zero(), 100, 50), degrees(30))));
    check_area(thirty, -45, 15, 1250);
    // 1250 / (cos 15 cos 85) = 14848.3
    const Watched forty(lamp_alone(turned(plate(Point::Zero(), 100, 148.483), degrees(40))));
    CHECK(forty.exact_mm2(-45, 15) == Approx(1250).epsilon(1e-4));
}

TEST_CASE("a lens turned away shows nothing, and nothing of it counts as approved", "[visibility]")
{
    const Watched lamp(lamp_alone(turned(plate(Point::Zero(), 60, 40), degrees(50))));
    const SeenArea seen = lamp.sampled(-45, 0);
    CHECK(in_mm2(seen.lens) == 0);
    CHECK(in_mm2(seen.approved) == 0);
    CHECK(in_mm2(seen.visible) == 0);
    CHECK(in_mm2(seen.high) == 0);
}

TEST_CASE("a disc shows pi r2 cosine", "[visibility]")
{
    // The inscribed polygon of n corners has the area n/2 r2 sin(360/n).
    const int n = 360;
    const double area = n / 2.0 * 30 * 30 * sin(degrees(360.0 / n));
    CHECK(area == Approx(pi * 900).epsilon(1e-4));
    const Watched lamp(lamp_alone(disc(30, n)));
    check_area(lamp, 0, 0, area);
    check_area(lamp, 60, 0, area / 2);
}

TEST_CASE("a ball shows pi r2 from everywhere", "[visibility]")
{
    // Facets inscribed at 3 degrees lie up to 0.04 % inside; the outline is a polygon of the same.
    const Watched lamp(lamp_alone(ball(20, 120)));
    for (const auto& [h, v] : {std::pair{0.0, 0.0}, {33.0, 10.0}, {-45.0, 15.0}, {80.0, -15.0}}) {
        CHECK(in_mm2(lamp.sampled(h, v).visible) == Approx(pi * 400).epsilon(1.5e-3));
        CHECK(lamp.exact_mm2(h, v) == Approx(pi * 400).epsilon(1.5e-3));
    }
}

TEST_CASE("a dome on an opaque base shows pi r2 (1 + cos t) / 2", "[visibility]")
{
    const Watched lamp(lamp_behind(dome(20, 120), {dome_base(20, 120)}));
    for (const double t : {0.0, 30.0, 60.0, 80.0}) {
        const double expected = pi * 400 * (1 + cos(degrees(t))) / 2;
        CHECK(in_mm2(lamp.sampled(t, 0).visible) == Approx(expected).epsilon(1.5e-3));
        CHECK(lamp.exact_mm2(t, 0) == Approx(expected).epsilon(1.5e-3));
    }
}

TEST_CASE("a cylinder-wall lens shows h r times a difference of sines", "[visibility]")
{
    const double r = 50;
    const double h = 40;
    const Watched lamp(lamp_alone(cylinder_wall(r, h, degrees(-20), degrees(70), 180)));
    // Chords of half a degree: 3e-6 of the area, except where the silhouette cuts a strip.
    CHECK(lamp.exact_mm2(-45, 0) == Approx(h * r * 0.577382).epsilon(1e-4));
    CHECK(lamp.exact_mm2(0, 0) == Approx(h * r * 1.281713).epsilon(1e-4));
    CHECK(lamp.exact_mm2(45, 0) == Approx(h * r * 1.328926).epsilon(1e-4));
    CHECK(lamp.exact_mm2(80, 0) == Approx(h * r * 0.826352).epsilon(1e-4));
    CHECK(in_mm2(lamp.sampled(45, 15).visible) ==
          Approx(h * r * 1.328926 * cos(degrees(15))).epsilon(1e-3));
}

TEST_CASE("an upright knife edge leaves clamp((e - D tanH + w/2)/w) of a lens", "[visibility]")
{
    const Watched lamp(lamp_behind(plate(Point::Zero(), 60, 40), {wall(40, 50, 500, -300, 300)}));
    check_area(lamp, 45, 0, 1131.3708498984762);
    check_area(lamp, 40, 0, 1422.8816);
    check_area(lamp, -45, 0, 2400 * cos(degrees(45)));
    check_area(lamp, 70, 0, 0);
}

TEST_CASE("behind the knife edge exactly 1250 mm2 are left at 42.9852 degrees", "[visibility]")
{
    const Watched lamp(lamp_behind(plate(Point::Zero(), 60, 40), {wall(40, 50, 500, -300, 300)}));
    double passes = 40;
    double fails = 45;
    while (fails - passes > 1e-5) {
        const double middle = (passes + fails) / 2;
        (lamp.exact_mm2(middle, 0) >= 1250 ? passes : fails) = middle;
    }
    CHECK(passes == Approx(42.9852).margin(1e-4));
}

TEST_CASE("a bonnet edge leaves clamp((e - D tanV / cosH + h/2)/h) of a lens", "[visibility]")
{
    const Watched lamp(lamp_behind(plate(Point::Zero(), 60, 40), {wall(50, -800, 800, 10, 900)}));
    for (const auto& [h, v] : {std::pair{0.0, 15.0}, {45.0, 15.0}, {-45.0, 10.0}, {30.0, -15.0}}) {
        const double share =
            std::clamp((10 - 50 * tan(degrees(v)) / cos(degrees(h)) + 20) / 40, 0.0, 1.0);
        check_area(lamp, h, v, 2400 * cos(degrees(h)) * cos(degrees(v)) * share);
    }
}

TEST_CASE("a lens at the bottom of a recess shows a product of two shares", "[visibility]")
{
    const Watched lamp(
        touching_at_a_tenth_of_a_micron(plate(Point::Zero(), 60, 30), recess_walls(60, 30, 10)));
    check_area(lamp, 45, 0, 1800 * cos(degrees(45)) * 0.8333333333333334);
    check_area(lamp, 45, 15, 1800 * 0.6830127018922193 * 0.7280734);
}

TEST_CASE("a lens at the bottom of a bore shows the overlap of two circles", "[visibility]")
{
    // (2/pi)(acos u - u sqrt(1 - u2)), u = D tan t / 2r; polygons of 360 corners.
    const Watched lamp(touching_at_a_tenth_of_a_micron(disc(25, 360), bore_wall(25, 20, 360)));
    for (const auto& [t, share] : {std::pair{30.0, 0.708593}, {45.0, 0.504632}}) {
        const double expected = pi * 625 * share * cos(degrees(t));
        CHECK(lamp.exact_mm2(t, 0) == Approx(expected).epsilon(5e-4));
        CHECK(in_mm2(lamp.sampled(t, 0).visible) == Approx(expected).epsilon(4e-3));
    }
}

TEST_CASE("ribs leave 1 - (b + t tanH)/p of a lens of whole pitches", "[visibility]")
{
    // Lens of six pitches, ribs running past both ends.
    const Watched lamp(
        lamp_behind(plate({-0.2, 0, 0}, 60, 40), {moved(ribs(-60, 10, 2, 3, 60, 12), {0, 0, 0})}));
    check_area(lamp, 45, 0, 2400 * cos(degrees(45)) * 0.5);
    check_area(lamp, 0, 0, 2400 * 0.8);
}

TEST_CASE("a bar narrower than the lens never hides all of it", "[visibility]")
{
    // 10 mm before 60 mm hides a sixth, wherever it stands wholly before the lens.
    const Watched lamp(lamp_behind(plate(Point::Zero(), 60, 40), {wall(1000, -5, 5, -600, 600)}));
    check_area(lamp, 0, 0, 2400 - 10 * 40);
    // Affected over (w + s)/D = 70 mm in 1 m: 2.005 degrees to either side.
    check_area(lamp, 1.9, 0,
               2400 * cos(degrees(1.9)) - 40 * (35 - 1000 * tan(degrees(1.9))) * cos(degrees(1.9)));
    check_area(lamp, 2.1, 0, 2400 * cos(degrees(2.1)));
}

TEST_CASE("the mean projected area of a convex body is a quarter of its surface", "[visibility]")
{
    // Cauchy's theorem. Mean over a grid of directions, weighed by solid angle.
    const Watched lamp(lamp_alone(box({0, 0, 0}, {30, 20, 10})));
    double sum = 0;
    double weight = 0;
    for (int v = -87; v <= 87; v += 6)
        for (int h = 3; h < 360; h += 6) {
            const double w = cos(degrees(v)); // longitude-latitude grids are dense at the poles
            sum += w * in_mm2(lamp.sampled(h, v).visible);
            weight += w;
        }
    CHECK(sum / weight == Approx(2 * (600 + 300 + 200) / 4.0).epsilon(2e-3));
}
