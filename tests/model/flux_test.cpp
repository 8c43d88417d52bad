#include "model/flux.h"

#include "model/photometric_fields.h"

#include <catch2/catch.hpp>

#include <numbers>

using namespace glim;
using namespace glim::test;

namespace {

constexpr double pi = std::numbers::pi;
/// What is asked of a grid of 5 degrees.
constexpr double tolerance = 1e-3;

double flux(Goniometer goniometer, const std::vector<Angle>& h, const std::vector<Angle>& v,
            const LightField& field, const PartsOf& parts)
{
    return in_lumens(flux_of(sampled(goniometer, h, v, field, parts)));
}

} // namespace

// 100 cd into the half-space are 200 pi lm; a Lambertian of 100 cd on its axis gives 100 pi lm.
TEST_CASE("a uniform half-space has its flux in all types", "[model]")
{
    const auto half = angles(-90, 90, 5);
    CHECK(flux(Goniometer::a, half, half, uniform, parts_of_a_and_b) ==
          Approx(200 * pi).epsilon(tolerance));
    CHECK(flux(Goniometer::b, half, half, uniform, parts_of_a_and_b) ==
          Approx(200 * pi).epsilon(tolerance));
    CHECK(flux(Goniometer::c, angles(0, 360, 5), angles(0, 90, 5), uniform, parts_of_nadir) ==
          Approx(200 * pi).epsilon(tolerance));
    CHECK(flux(Goniometer::c, angles(0, 360, 5), angles(0, 180, 5), uniform, parts_of_nadir) ==
          Approx(400 * pi).epsilon(tolerance));
}

TEST_CASE("a Lambertian source has its flux in all types and mountings", "[model]")
{
    const auto half = angles(-90, 90, 5);
    CHECK(flux(Goniometer::a, half, half, lambertian, parts_of_a_and_b) ==
          Approx(100 * pi).epsilon(tolerance));
    CHECK(flux(Goniometer::b, half, half, lambertian, parts_of_a_and_b) ==
          Approx(100 * pi).epsilon(tolerance));
    CHECK(flux(Goniometer::c, angles(0, 360, 5), angles(0, 90, 5), lambertian, parts_of_nadir) ==
          Approx(100 * pi).epsilon(tolerance));
    CHECK(flux(Goniometer::c, angles(0, 360, 5), angles(0, 180, 5), lambertian, parts_of_nadir) ==
          Approx(100 * pi).epsilon(tolerance));
    CHECK(flux(Goniometer::c, angles(0, 360, 5), angles(0, 180, 5), lambertian, parts_of_upright) ==
          Approx(100 * pi).epsilon(tolerance));
}

// A Lambertian source would not show it: cosH cosV is the same in both.
TEST_CASE("taking the wrong type's measure is far outside the tolerance", "[model]")
{
    const auto half = angles(-90, 90, 5);
    IntensityGrid skew = sampled(Goniometer::a, half, half, skew_field, parts_of_a_and_b);
    const double right = in_lumens(flux_of(skew));
    skew.goniometer = Goniometer::b;
    CHECK(in_lumens(flux_of(skew)) != Approx(right).epsilon(0.01));
}

TEST_CASE("only the measured range counts", "[model]")
{
    // The solid angle of -45 to 80 by +-15 degrees is (80 + 45) pi / 180 x 2 sin 15.
    CHECK(flux(Goniometer::a, angles(-45, 80, 5), angles(-15, 15, 5), uniform, parts_of_a_and_b) ==
          Approx(112.9311).epsilon(1e-6));
}

TEST_CASE("uneven angles do not let the flux swing", "[model]")
{
    IntensityGrid grid{Goniometer::a,
                       {degrees(-10), degrees(10)},
                       {degrees(-10), degrees(-9.99), degrees(10)},
                       {}};
    // A spike in the short gap: linear on both sides, it weighs as a triangle of 20 degrees does.
    grid.candela = {candelas(0), candelas(100), candelas(0),
                    candelas(0), candelas(100), candelas(0)};
    const double measured = in_lumens(flux_of(grid));
    CHECK(measured > 0);
    CHECK(measured == Approx(100.0 * (20 * pi / 180) * (10 * pi / 180)).epsilon(0.02));
}
