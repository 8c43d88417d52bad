#include "model/mounting.h"

#include "model/photometric_fields.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

namespace {

/// What is asked of one field filed in several types.
constexpr double tolerance = 1e-3;

struct Filed {
    const char* what;
    IntensityGrid grid;
    Mounting mounting;
};

/// The skew field filed in every type, as of a right lamp: outboard is to the right.
std::vector<Filed> all_types()
{
    const auto half = angles(-90, 90, 1);
    const auto round = angles(0, 360, 1);
    const auto gamma = angles(0, 180, 1);
    const auto right_lamp = [](BeamAxis beam) { return Mounting{beam, {}, Side::right}; };
    return {
        {"type A", sampled(Goniometer::a, half, half, skew_field, parts_of_a_and_b),
         right_lamp(BeamAxis::h0_v0)},
        {"type B", sampled(Goniometer::b, half, half, skew_field, parts_of_a_and_b),
         right_lamp(BeamAxis::h0_v0)},
        {"type C, hung", sampled(Goniometer::c, round, gamma, skew_field, parts_of_nadir),
         right_lamp(BeamAxis::nadir)},
        {"type C, upright", sampled(Goniometer::c, round, gamma, skew_field, parts_of_upright),
         right_lamp(BeamAxis::c0_horizontal)},
    };
}

double toward(const Filed& filed, const Mounting& mounting, double h, double v,
              ReferenceAxis axis = ReferenceAxis::forward)
{
    const auto intensity =
        intensity_toward(filed.grid, file_from_lamp(mounting, axis), {degrees(h), degrees(v)});
    return in_candelas(intensity.value());
}

/// The field at H to the right and V, both by the vertical pole.
double field_at(double h_right, double v)
{
    const Vector d = file_vector(Goniometer::a, {degrees(h_right), degrees(v)});
    return skew_field(d.x(), d.y(), d.z());
}

Photometry with(Goniometer goniometer, FiledSymmetry symmetry)
{
    Photometry photometry;
    photometry.grid.goniometer = goniometer;
    photometry.symmetry = symmetry;
    return photometry;
}

std::string trouble(const Photometry& photometry, const std::optional<Mounting>& mounting)
{
    const auto found = mounting_trouble(photometry, mounting);
    return found ? found->what + "; " + found->remedy : "";
}

} // namespace

TEST_CASE("one skew field has the same intensity in the same direction in all types", "[model]")
{
    const std::vector<std::pair<double, double>> bearings = {
        {0, 0},   {20, 5},   {-20, 5},   {45, 15}, {45, -15},    {-45, 15}, {-45, -15},
        {80, 15}, {80, -15}, {-80, -15}, {10, 60}, {-33.3, 7.7}, {0, -89}};
    for (const Filed& filed : all_types())
        for (const auto& [h, v] : bearings) {
            INFO(filed.what << " at H " << h << ", V " << v);
            CHECK(toward(filed, filed.mounting, h, v) == Approx(field_at(h, v)).epsilon(tolerance));
        }
}

TEST_CASE("the lamp on the other side has the mirror image", "[model]")
{
    for (const Filed& filed : all_types()) {
        INFO(filed.what);
        Mounting mounting = filed.mounting;
        mounting.measured_on = Side::left;
        // Of a left lamp, outboard is to the left.
        CHECK(toward(filed, mounting, 45, 15) == Approx(field_at(-45, 15)).epsilon(tolerance));
        CHECK(toward(filed, mounting, -80, 15) == Approx(field_at(80, 15)).epsilon(tolerance));
    }
}

TEST_CASE("which way outboard lies depends on the axis that the lamp looks along", "[model]")
{
    CHECK(plus_h_is_to_the_right(Side::right, ReferenceAxis::forward));
    CHECK_FALSE(plus_h_is_to_the_right(Side::left, ReferenceAxis::forward));
    CHECK(plus_h_is_to_the_right(Side::left, ReferenceAxis::rearward));
    CHECK_FALSE(plus_h_is_to_the_right(Side::right, ReferenceAxis::rearward));
    // Looking out of the left side, the front is to the right.
    CHECK(plus_h_is_to_the_right(Side::left, ReferenceAxis::outboard));
    CHECK_FALSE(plus_h_is_to_the_right(Side::right, ReferenceAxis::outboard));
    // On the median plane +H is to the vehicle's left.
    CHECK_FALSE(plus_h_is_to_the_right(Side::median, ReferenceAxis::forward));
    CHECK(plus_h_is_to_the_right(Side::median, ReferenceAxis::rearward));
    const Filed a = all_types().front();
    CHECK(toward(a, {BeamAxis::h0_v0, {}, Side::left}, 45, 15, ReferenceAxis::rearward) ==
          Approx(field_at(45, 15)).epsilon(tolerance));
}

TEST_CASE("a roll turns the file's up to the right as seen from the lamp", "[model]")
{
    for (const Filed& filed : all_types()) {
        INFO(filed.what);
        Mounting mounting = filed.mounting;
        mounting.roll = degrees(90);
        // The lamp's right is now the file's up, and the lamp's up the file's left.
        CHECK(toward(filed, mounting, 30, 0) == Approx(field_at(0, 30)).epsilon(tolerance));
        CHECK(toward(filed, mounting, 0, 30) == Approx(field_at(-30, 0)).epsilon(tolerance));
        // A left lamp rolls as its file says too: right is inboard.
        mounting.measured_on = Side::left;
        CHECK(toward(filed, mounting, -30, 0) == Approx(field_at(0, 30)).epsilon(tolerance));
    }
}

TEST_CASE("a mounting turns and at most mirrors", "[model]")
{
    for (const BeamAxisWord& row : beam_axis_words)
        for (const Side side : {Side::left, Side::right}) {
            const auto m = file_from_lamp({row.axis, degrees(33), side}, ReferenceAxis::forward);
            CHECK((m * m.transpose() - Eigen::Matrix3d::Identity()).norm() < 1e-15);
        }
}

TEST_CASE("what a mounting lacks is told, and nothing is guessed", "[model]")
{
    const Photometry c = with(Goniometer::c, FiledSymmetry::about_pole);
    const Photometry a = with(Goniometer::a, FiledSymmetry::none);
    const Photometry alike = with(Goniometer::a, FiledSymmetry::vertical_plane);
    CHECK(trouble(c, {}) == "a type C file does not say where the lamp's beam lies; say in "
                            "`mounting` whether it is \"nadir\" or \"c0_horizontal\", and which "
                            "lamp was measured");
    CHECK(trouble(a, {}) == "a type A file does not say for which side it is; say in `mounting` "
                            "which lamp was measured: \"left\", \"right\" or \"median\"");
    CHECK(trouble(alike, {}) == "");
    CHECK(trouble(c, Mounting{BeamAxis::nadir, {}, Side::left}) == "");
    CHECK(trouble(c, Mounting{BeamAxis::h0_v0, {}, Side::left}) ==
          "a type C file has no beam along \"h0_v0\"; write \"nadir\" or \"c0_horizontal\"");
    CHECK(trouble(a, Mounting{BeamAxis::nadir, {}, Side::left}) ==
          "a type A file has no beam along \"nadir\"; write \"h0_v0\"");
    CHECK(trouble(a, Mounting{BeamAxis::h0_v0, {}, Side::right}) == "");
}

TEST_CASE("a file is alike on both sides by its numbers as they are mounted", "[model]")
{
    for (const Filed& filed : all_types()) {
        INFO(filed.what);
        CHECK_FALSE(is_alike_on_both_sides(filed.grid, filed.mounting));
    }
    // Even in y, which lies to the right or left in all types; y and z differ, so a roll shows.
    const auto even = [](double x, double y, double z) {
        return skew_field(x, y, z) + skew_field(x, -y, z);
    };
    const auto half = angles(-90, 90, 5);
    const IntensityGrid a = sampled(Goniometer::a, half, half, even, parts_of_a_and_b);
    const IntensityGrid c =
        sampled(Goniometer::c, angles(0, 360, 5), angles(0, 180, 5), even, parts_of_nadir);
    CHECK(is_alike_on_both_sides(a, {BeamAxis::h0_v0, {}, Side::median}));
    CHECK(is_alike_on_both_sides(c, {BeamAxis::nadir, {}, Side::median}));
    CHECK_FALSE(is_alike_on_both_sides(c, {BeamAxis::nadir, degrees(30), Side::median}));
}
