#include "model/intensity_grid.h"

#include "model/photometric_fields.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

namespace {

/// H 0 and 10, V -5, 0 and 20; each candela tells where it stands.
IntensityGrid small_grid()
{
    return {Goniometer::a,
            {degrees(0), degrees(10)},
            {degrees(-5), degrees(0), degrees(20)},
            {candelas(1), candelas(2), candelas(4), candelas(11), candelas(12), candelas(14)}};
}

std::optional<double> at(const IntensityGrid& grid, double h, double v)
{
    const auto intensity = intensity_at(grid, {degrees(h), degrees(v)});
    return intensity ? std::optional(in_candelas(*intensity)) : std::nullopt;
}

} // namespace

TEST_CASE("intensity is the file's own at its points and bilinear between", "[model]")
{
    const IntensityGrid grid = small_grid();
    CHECK(at(grid, 0, -5) == 1.0);
    CHECK(at(grid, 10, 20) == 14.0);
    CHECK(at(grid, 10, 0) == 12.0);
    CHECK(at(grid, 5, 0) == 7.0);
    CHECK(at(grid, 2.5, 10) == Approx(5.5));
    CHECK(at(grid, 7.5, -2.5) == Approx(9.0));
}

TEST_CASE("outside the measured range the intensity is not known", "[model]")
{
    const IntensityGrid grid = small_grid();
    CHECK_FALSE(at(grid, -0.001, 0));
    CHECK_FALSE(at(grid, 10.001, 0));
    CHECK_FALSE(at(grid, 5, 20.001));
    CHECK_FALSE(at(grid, 5, -5.001));
    CHECK_FALSE(intensity_toward(grid, -Direction::x()));
}

TEST_CASE("directions on the edge of the measured range are in it, rounding and all", "[model]")
{
    IntensityGrid grid = sampled(Goniometer::a, angles(-45, 80, 2.5), angles(-15, 15, 2.5), uniform,
                                 parts_of_a_and_b);
    for (const Angle h : grid.horizontal)
        for (const Angle v : {degrees(-15), degrees(15)})
            CHECK(intensity_toward(grid, Direction::along(file_vector(Goniometer::a, {h, v}))));
    for (const Angle v : grid.vertical)
        for (const Angle h : {degrees(-45), degrees(80)})
            CHECK(intensity_toward(grid, Direction::along(file_vector(Goniometer::a, {h, v}))));
}

TEST_CASE("a whole turn has no seam", "[model]")
{
    const IntensityGrid grid =
        sampled(Goniometer::c, angles(0, 360, 10), angles(0, 180, 10), skew_field, parts_of_nadir);
    const auto just_before = at(grid, 359.9999, 40);
    REQUIRE(just_before);
    CHECK(*just_before == Approx(*at(grid, 0, 40)).epsilon(1e-5));
    CHECK(intensity_toward(grid, Direction::along({1, -1e-18, 0})));
}

TEST_CASE("at a pole any plane will do", "[model]")
{
    IntensityGrid part{Goniometer::a,
                       {degrees(30), degrees(60)},
                       {degrees(0), degrees(90)},
                       {candelas(1), candelas(5), candelas(2), candelas(6)}};
    CHECK(in_candelas(intensity_toward(part, Direction::z()).value()) == 5);
    part.goniometer = Goniometer::b;
    part.horizontal = {degrees(0), degrees(90)};
    part.vertical = {degrees(-60), degrees(-30)};
    CHECK(in_candelas(intensity_toward(part, Direction::y()).value()) == 6);
    const IntensityGrid c{Goniometer::c,
                          {degrees(0), degrees(360)},
                          {degrees(0), degrees(90)},
                          {candelas(7), candelas(5), candelas(8), candelas(6)}};
    CHECK(in_candelas(intensity_toward(c, -Direction::z()).value()) == 7);
}

TEST_CASE("the peak is the highest point, of equal ones the one nearest to the axis", "[model]")
{
    const Peak peak = peak_of(small_grid());
    CHECK(in_candelas(peak.intensity) == 14);
    CHECK(peak.at == FileAngles{degrees(10), degrees(20)});
    const IntensityGrid flat =
        sampled(Goniometer::a, angles(-10, 10, 5), angles(-10, 10, 5), uniform, parts_of_a_and_b);
    CHECK(peak_of(flat).at == FileAngles{degrees(0), degrees(0)});
}
