#include "model/goniometer.h"

#include "units/trig.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>

using namespace glim;

namespace {

constexpr double ten_thousandth = 5e-5;

void expect_vector(Goniometer goniometer, double h, double v, const Vector& expected)
{
    INFO(h << ", " << v);
    CHECK((file_vector(goniometer, {degrees(h), degrees(v)}) - expected).norm() < 1e-15);
}

FileAngles b_of_a(double h, double v)
{
    const Vector d = file_vector(Goniometer::a, {degrees(h), degrees(v)});
    return file_angles(Goniometer::b, Direction::along(d));
}

double apart_deg(double h, double v)
{
    const Vector a = file_vector(Goniometer::a, {degrees(h), degrees(v)});
    const Vector b = file_vector(Goniometer::b, {degrees(h), degrees(v)});
    return in_degrees(angle_of(a.cross(b).norm(), a.dot(b)));
}

} // namespace

TEST_CASE("right angles of every goniometer lie exactly on the axes", "[model]")
{
    expect_vector(Goniometer::a, 0, 0, {1, 0, 0});
    expect_vector(Goniometer::a, 90, 0, {0, 1, 0});
    expect_vector(Goniometer::a, -90, 0, {0, -1, 0});
    expect_vector(Goniometer::a, 30, 90, {0, 0, 1});
    expect_vector(Goniometer::b, 0, 0, {1, 0, 0});
    expect_vector(Goniometer::b, 90, 30, {0, 1, 0});
    expect_vector(Goniometer::b, 0, 90, {0, 0, 1});
    expect_vector(Goniometer::c, 50, 0, {0, 0, -1});
    expect_vector(Goniometer::c, 0, 90, {1, 0, 0});
    expect_vector(Goniometer::c, 90, 90, {0, 1, 0});
    expect_vector(Goniometer::c, 270, 90, {0, -1, 0});
    expect_vector(Goniometer::c, 0, 180, {0, 0, 1});
}

// From the vectors of the two systems, by hand: B's H is the arc sine of cosV sinH of A.
TEST_CASE("directions of type A have the known angles of type B", "[model]")
{
    CHECK(in_degrees(b_of_a(20, 5).h) == Approx(19.9207).margin(ten_thousandth));
    CHECK(in_degrees(b_of_a(20, 5).v) == Approx(5.3191).margin(ten_thousandth));
    CHECK(in_degrees(b_of_a(45, 15).h) == Approx(43.0795).margin(ten_thousandth));
    CHECK(in_degrees(b_of_a(45, 15).v) == Approx(20.7536).margin(ten_thousandth));
    CHECK(in_degrees(b_of_a(80, 15).h) == Approx(72.0361).margin(ten_thousandth));
    CHECK(in_degrees(b_of_a(80, 15).v) == Approx(57.0542).margin(ten_thousandth));
}

TEST_CASE("taking type A for type B hardly shows near the axis, and does at the corners", "[model]")
{
    CHECK(apart_deg(20, 5) == Approx(0.31).margin(0.005));
    CHECK(apart_deg(45, 15) == Approx(4.56).margin(0.005));
    CHECK(apart_deg(80, 15) == Approx(12.43).margin(0.005));
}

TEST_CASE("angles come back from their vector", "[model]")
{
    const std::vector<std::pair<Goniometer, std::vector<FileAngles>>> known = {
        {Goniometer::a, {{degrees(-135), degrees(-89.999)}, {degrees(80), degrees(15)}}},
        {Goniometer::b, {{degrees(89.999), degrees(170)}, {degrees(-72), degrees(-57)}}},
        {Goniometer::c, {{degrees(300), degrees(0.001)}, {degrees(359), degrees(179)}}},
    };
    for (const auto& [goniometer, all] : known)
        for (const FileAngles& angles : all) {
            const Direction d = Direction::along(file_vector(goniometer, angles));
            const FileAngles back = file_angles(goniometer, d);
            CHECK(in_degrees(back.h) == Approx(in_degrees(angles.h)).margin(1e-9));
            CHECK(in_degrees(back.v) == Approx(in_degrees(angles.v)).margin(1e-12));
        }
}

TEST_CASE("C planes count up to 360 and never below 0", "[model]")
{
    const auto c_of = [](double x, double y) {
        return in_degrees(file_angles(Goniometer::c, Direction::along({x, y, 0})).h);
    };
    CHECK(c_of(0, -1) == 270);
    CHECK(c_of(-1, 0) == 180);
    CHECK(c_of(1, 0) == 0);
    CHECK(c_of(1, -1e-30) < 360);
}
