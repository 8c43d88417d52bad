#include "units/trig.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace glim {

namespace {

constexpr double radians_per_degree = std::numbers::pi / 180;

/// `a` as a whole number of right angles and a rest within 45 degrees; both exact.
struct Quarters {
    int count;
    double rest_radians;
};

Quarters quarters(Angle a)
{
    int count = 0;
    const double rest = std::remquo(in_degrees(a), 90.0, &count);
    return {count & 3, rest * radians_per_degree};
}

double sine_after(int right_angles, double rest)
{
    switch (right_angles & 3) {
    case 0:
        return std::sin(rest);
    case 1:
        return std::cos(rest);
    case 2:
        return 0.0 - std::sin(rest); // not -sin: that would make a negative zero
    default:
        return -std::cos(rest);
    }
}

} // namespace

double sin(Angle a)
{
    const auto [count, rest] = quarters(a);
    return sine_after(count, rest);
}

double cos(Angle a)
{
    const auto [count, rest] = quarters(a);
    return sine_after(count + 1, rest);
}

double tan(Angle a) { return sin(a) / cos(a); }

Angle angle_of(double y, double x)
{
    // A negative zero would be taken for a hair below, and made half a turn or its opposite.
    const double angle = std::atan2(y + 0.0, x + 0.0) / radians_per_degree;
    // What is a hair below the negative x axis rounds to it.
    return degrees(angle == -180 ? 180 : angle);
}

Angle arc_sine(double sine)
{
    return degrees(std::asin(std::clamp(sine, -1.0, 1.0)) / radians_per_degree);
}

double in_radians(Angle a) { return in_degrees(a) * radians_per_degree; }

} // namespace glim
