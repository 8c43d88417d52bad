#include "model/filed_symmetry.h"

#include "model/photometric_fields.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

namespace {

/// Candela that tell their plane: one vertical angle more than needed, so that order shows.
IntensityGrid filed(Goniometer goniometer, const std::vector<double>& planes)
{
    IntensityGrid grid{goniometer, {}, {degrees(0), degrees(90)}, {}};
    for (const double plane : planes) {
        grid.horizontal.push_back(degrees(plane));
        grid.candela.push_back(candelas(plane));
        grid.candela.push_back(candelas(plane + 0.5));
    }
    return grid;
}

/// Of each plane of the whole, which filed one it is.
std::vector<std::pair<double, double>> planes_of(const IntensityGrid& whole)
{
    std::vector<std::pair<double, double>> planes;
    for (std::size_t h = 0; h < whole.horizontal.size(); ++h) {
        planes.emplace_back(in_degrees(whole.horizontal[h]), in_candelas(whole.at(h, 0)));
        CHECK(in_candelas(whole.at(h, 1)) == in_candelas(whole.at(h, 0)) + 0.5);
    }
    return planes;
}

using Planes = std::vector<std::pair<double, double>>;

} // namespace

TEST_CASE("one C plane goes all round", "[model]")
{
    CHECK(planes_of(expanded(filed(Goniometer::c, {0}), FiledSymmetry::about_pole)) ==
          Planes{{0, 0}, {360, 0}});
}

TEST_CASE("planes from C 0 to C 180 are mirrored to the other side", "[model]")
{
    CHECK(planes_of(expanded(filed(Goniometer::c, {0, 30, 180}), FiledSymmetry::plane_c0_c180)) ==
          Planes{{0, 0}, {30, 30}, {180, 180}, {330, 30}, {360, 0}});
}

TEST_CASE("planes about C 90 to C 270 are mirrored whichever half is filed", "[model]")
{
    CHECK(planes_of(
              expanded(filed(Goniometer::c, {90, 180, 200, 270}), FiledSymmetry::plane_c90_c270)) ==
          Planes{{0, 180}, {90, 90}, {180, 180}, {200, 200}, {270, 270}, {340, 200}, {360, 180}});
    CHECK(planes_of(
              expanded(filed(Goniometer::c, {270, 320, 0, 90}), FiledSymmetry::plane_c90_c270)) ==
          Planes{{0, 0}, {90, 90}, {180, 0}, {220, 320}, {270, 270}, {320, 320}, {360, 0}});
}

TEST_CASE("a whole turn without a plane at C 0 gets the one between its neighbours", "[model]")
{
    CHECK(planes_of(expanded(filed(Goniometer::c, {90, 270}), FiledSymmetry::plane_c90_c270)) ==
          Planes{{0, 180}, {90, 90}, {270, 270}, {360, 180}});
}

TEST_CASE("a quarter is mirrored three times", "[model]")
{
    CHECK(planes_of(expanded(filed(Goniometer::c, {0, 20, 90}), FiledSymmetry::both_planes)) ==
          Planes{{0, 0},
                 {20, 20},
                 {90, 90},
                 {160, 20},
                 {180, 0},
                 {200, 20},
                 {270, 90},
                 {340, 20},
                 {360, 0}});
}

TEST_CASE("a whole turn is closed, and stays as it is where it is closed already", "[model]")
{
    CHECK(planes_of(expanded(filed(Goniometer::c, {0, 90, 250}), FiledSymmetry::none)) ==
          Planes{{0, 0}, {90, 90}, {250, 250}, {360, 0}});
    CHECK(planes_of(expanded(filed(Goniometer::c, {0, 90, 360}), FiledSymmetry::none)) ==
          Planes{{0, 0}, {90, 90}, {360, 360}});
}

TEST_CASE("types A and B are mirrored about H 0 or left as they are", "[model]")
{
    CHECK(planes_of(expanded(filed(Goniometer::a, {0, 40, 90}), FiledSymmetry::vertical_plane)) ==
          Planes{{-90, 90}, {-40, 40}, {0, 0}, {40, 40}, {90, 90}});
    CHECK(planes_of(expanded(filed(Goniometer::b, {-45, 0, 80}), FiledSymmetry::none)) ==
          Planes{{-45, -45}, {0, 0}, {80, 80}});
}
