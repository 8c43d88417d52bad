#include "generator/cubic_surface.h"

#include <catch2/catch.hpp>

#include <algorithm>

namespace {

using namespace glim;
using glim::demo::CubicSurface;

// Control points over a uniform clamped knot row stand at the means of three neighbouring knots.
double greville(int place, int count)
{
    double sum = 0;
    for (int k = place - 2; k <= place; ++k)
        sum += std::min(std::max(k, 0), count - 3);
    return sum / 3;
}

CubicSurface sloping_plane(int columns, int rows)
{
    std::vector<Point> net;
    for (int j = 0; j < rows; ++j)
        for (int i = 0; i < columns; ++i) {
            const double u = greville(i, columns);
            const double v = greville(j, rows);
            net.emplace_back(10 * u, 20 * v, 3 * u - 4 * v);
        }
    return {columns, rows, net};
}

TEST_CASE("a B-spline over evenly spread control points is the plane through them", "[demo]")
{
    // Linear precision: sum of Greville abscissae times basis functions is the parameter itself.
    const CubicSurface surface = sloping_plane(7, 5);
    for (double u = 0; u <= 4; u += 0.25)
        for (double v = 0; v <= 2; v += 0.25)
            CHECK((surface.at({u, v}) - Point(10 * u, 20 * v, 3 * u - 4 * v)).norm() < 1e-12);
}

TEST_CASE("beyond its end the last span's polynomial goes on", "[demo]")
{
    const CubicSurface surface = sloping_plane(7, 5);
    CHECK((surface.at({-0.5, 2.5}) - Point(-5, 50, -11.5)).norm() < 1e-12);
}

} // namespace
