#include "words/intensity_profile.h"

#include "model/filed_symmetry.h"
#include "model/photometric_fields.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

TEST_CASE("a type A file shows its intensities along H and along V", "[words]")
{
    const auto profiles = intensity_profiles(sampled(
        Goniometer::a, angles(-45, 80, 5), angles(-15, 15, 5), lambertian, parts_of_a_and_b));
    REQUIRE(profiles.size() == 2);
    CHECK(profiles[0].title == "Along H at V 0, in cd");
    // 125 degrees in 25 points at most: every 10 degrees.
    REQUIRE(profiles[0].points.size() == 13);
    CHECK(profiles[0].points.front().at == degrees(-40));
    CHECK(in_candelas(profiles[0].points[4].intensity) == Approx(100));
    CHECK(profiles[1].title == "Along V at H 0, in cd");
    CHECK(profiles[1].points.front().at == degrees(-14));
}

TEST_CASE("a range that leaves the axis out is shown where it is nearest to it", "[words]")
{
    const auto profiles = intensity_profiles(
        sampled(Goniometer::b, angles(10, 60, 5), angles(-30, -5, 5), uniform, parts_of_a_and_b));
    CHECK(profiles[0].title == "Along H at V -5, in cd");
    CHECK(profiles[1].title == "Along V at H 10, in cd");
    CHECK(profiles[0].points.front().at == degrees(10));
}

TEST_CASE("type C is shown across the pole", "[words]")
{
    const auto profiles = intensity_profiles(
        sampled(Goniometer::c, angles(0, 360, 5), angles(0, 90, 5), skew_field, parts_of_nadir));
    CHECK(profiles[0].title == "Along gamma through C 0, negative through C 180, in cd");
    CHECK(profiles[1].title == "Along gamma through C 90, negative through C 270, in cd");
    REQUIRE(profiles[0].points.size() == 19);
    // Gamma 90 in C 0 is to the right, and negative to the left.
    CHECK(in_candelas(profiles[0].points.back().intensity) == Approx(skew_field(0, 1, 0)));
    CHECK(in_candelas(profiles[0].points.front().intensity) == Approx(skew_field(0, -1, 0)));
}

TEST_CASE("bars are to scale, and what is not dark has one mark at least", "[words]")
{
    const IntensityProfile profile{"",
                                   "H",
                                   {{degrees(-10), candelas(0)},
                                    {degrees(0), candelas(200)},
                                    {degrees(10), candelas(0.01)},
                                    {degrees(20), candelas(100)}}};
    CHECK(profile_lines(profile, candelas(200), 10) ==
          std::vector<std::string>{"H  -10    0.00", "H    0  200.00  ##########",
                                   "H   10    0.01  #", "H   20  100.00  #####"});
}

TEST_CASE("a dark file has no bars", "[words]")
{
    const IntensityProfile profile{"", "V", {{degrees(0), candelas(0)}}};
    CHECK(profile_lines(profile, candelas(0), 10) == std::vector<std::string>{"V  0  0.0000"});
}
