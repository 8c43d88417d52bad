#include "remedy/depth_field.h"

#include "shapes/simple_shapes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace glim;

namespace {

/// 100 by 100 mm about the origin, in the plane x = 0, cells of 2 mm, pushed along -x.
const TriangleMesh& field_of_play()
{
    static const TriangleMesh mesh = shapes::plate({0, 0, 0}, 100, 100, 50);
    return mesh;
}

double across(const Point& p) { return std::hypot(p.y(), p.z()); }

/// Wanted: `depth` within `radius` of the middle.
std::vector<double> pit(double depth, double radius)
{
    std::vector<double> wanted;
    for (const Point& p : field_of_play().points)
        wanted.push_back(across(p) <= radius ? depth : 0);
    return wanted;
}

} // namespace

TEST_CASE("around what is wanted depths fall off with the slope", "[remedy]")
{
    const FieldRules rules{.slope = 0.5, .blend_mm = 0};
    const std::vector<double> field =
        cones_over(field_of_play(), -Direction::x(), pit(10, 0.1), rules, 3);
    for (std::size_t i = 0; i < field.size(); ++i) {
        const double cone = 10 - 0.5 * across(field_of_play().points[i]);
        INFO(across(field_of_play().points[i]));
        if (cone > -3 + 1e-9)
            CHECK(field[i] == Approx(cone).margin(1e-9));
        else if (cone < -3 - 1e-9)
            CHECK(field[i] == -std::numeric_limits<double>::infinity());
    }
}

TEST_CASE("a cone reaches over a gap to another part", "[remedy]")
{
    const TriangleMesh two = shapes::joined(
        field_of_play(), shapes::moved(shapes::plate({0, 0, 0}, 20, 100, 10), {30, 70, 0}));
    std::vector<double> wanted(two.points.size(), 0);
    for (std::size_t i = 0; i < two.points.size(); ++i)
        wanted[i] = across(two.points[i] - Point(0, 50, 0)) < 0.1 ? 10 : 0;
    const std::vector<double> field =
        cones_over(two, -Direction::x(), wanted, {.slope = 0.25, .blend_mm = 0}, 0);
    for (std::size_t i = 0; i < two.points.size(); ++i)
        if (two.points[i].x() == 30 && two.points[i].y() == 60 && two.points[i].z() == 0)
            CHECK(field[i] == Approx(10 - 0.25 * 10));
}

TEST_CASE("a faired field is nowhere less than wanted, nowhere deeper, and runs out blended",
          "[remedy]")
{
    const FieldRules rules{.slope = 0.5, .blend_mm = 10};
    const std::vector<double> wanted = pit(10, 12);
    const std::vector<double> caps(wanted.size(), 1e9);
    const std::vector<double> field =
        faired_depths(field_of_play(), -Direction::x(), wanted, caps, rules);
    const double band = blend_band(rules);
    // The fillet of radius 10 touches 10 tan(s / 2) from the corner: 2.36 mm, at half the slope.
    CHECK(band == Approx(10 * 0.5 * std::tan(std::atan(0.5) / 2)));
    for (std::size_t i = 0; i < field.size(); ++i) {
        CHECK(field[i] >= wanted[i]);
        CHECK(field[i] <= 10 + 1e-9);
        if (across(field_of_play().points[i]) > 12 + 10 / 0.5 + band / 0.5 + 2)
            CHECK(field[i] == 0);
    }
}

TEST_CASE("held points stay, and beside them nothing is steeper than the slope", "[remedy]")
{
    const FieldRules rules{.slope = 0.5, .blend_mm = 4};
    std::vector<std::uint8_t> held;
    for (const Point& p : field_of_play().points)
        held.push_back(p.y() > 19 ? 1 : 0);
    const std::vector<double> caps = depth_caps(field_of_play(), -Direction::x(), held, rules, 10);
    const std::vector<double> field =
        faired_depths(field_of_play(), -Direction::x(), pit(10, 15), caps, rules);
    for (std::size_t i = 0; i < field.size(); ++i) {
        const double from_held = 20 - field_of_play().points[i].y();
        CHECK(field[i] <= std::max(0.0, 0.5 * from_held) + 1e-9);
        if (held[i] != 0)
            CHECK(field[i] == 0);
    }
}
