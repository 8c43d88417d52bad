#include "shapes/random_numbers.h"

#include "units/trig.h"

#include <Eigen/Geometry>

#include <cassert>
#include <cmath>

namespace glim::shapes {

std::uint64_t RandomNumbers::next()
{
    state_ += 0x9e3779b97f4a7c15U; // 2^64 over the golden ratio, odd: the counter meets every value
    std::uint64_t bits = state_;
    bits = (bits ^ (bits >> 30)) * 0xbf58476d1ce4e5b9U;
    bits = (bits ^ (bits >> 27)) * 0x94d049bb133111ebU;
    return bits ^ (bits >> 31);
}

double RandomNumbers::real(double least, double most)
{
    const double share = static_cast<double>(next() >> 11) * 0x1p-53;
    return least + (most - least) * share;
}

double RandomNumbers::magnitude(double least, double most)
{
    return least * std::pow(most / least, real(0, 1));
}

int RandomNumbers::whole(int least, int most)
{
    assert(least <= most);
    const auto choices = static_cast<std::uint64_t>(most - least) + 1;
    return least + static_cast<int>(next() % choices);
}

Direction RandomNumbers::direction()
{
    const double height = real(-1, 1);
    const Angle around = degrees(real(0, 360));
    const double radius = std::sqrt(1 - height * height);
    return Direction::along({radius * cos(around), radius * sin(around), height});
}

Direction RandomNumbers::across(const Direction& axis)
{
    const Angle around = degrees(real(0, 360));
    const Vector first = axis.vector().unitOrthogonal();
    const Vector second = axis.vector().cross(first);
    return Direction::along(cos(around) * first + sin(around) * second);
}

// One draw a statement: the order of several in one expression is the compiler's to choose.

Vector RandomNumbers::vector(double least, double most)
{
    const double length = real(least, most);
    return length * direction().vector();
}

Vector RandomNumbers::across(const Direction& axis, double least, double most)
{
    const double length = real(least, most);
    return length * across(axis).vector();
}

Vector RandomNumbers::sides(double least, double most)
{
    Vector sides;
    for (double& side : sides)
        side = real(least, most);
    return sides;
}

} // namespace glim::shapes
