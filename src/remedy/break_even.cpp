#include "remedy/break_even.h"

#include <algorithm>

namespace glim {

namespace {

/// n above 0 with once_a + n a = once_b + n b.
std::optional<double> crossing(double once_a, double a, double once_b, double b)
{
    if (a == b)
        return std::nullopt;
    const double vehicles = (once_b - once_a) / (a - b);
    return vehicles > 0 ? std::optional(vehicles) : std::nullopt;
}

} // namespace

BreakEven break_even(const CostSum& one, const CostSum& other)
{
    BreakEven even;
    const double once_a = one.once.likely, a = one.a_vehicle.likely;
    const double once_b = other.once.likely, b = other.a_vehicle.likely;
    even.vehicles = crossing(once_a, a, once_b, b);
    even.alike = once_a == once_b && a == b;
    even.one_below = once_a != once_b ? once_a < once_b : a < b;
    for (const double low_or_high_a : {one.once.low, one.once.high})
        for (const double each_a : {one.a_vehicle.low, one.a_vehicle.high})
            for (const double low_or_high_b : {other.once.low, other.once.high})
                for (const double each_b : {other.a_vehicle.low, other.a_vehicle.high}) {
                    const auto n = crossing(low_or_high_a, each_a, low_or_high_b, each_b);
                    even.always = even.always && n.has_value();
                    if (n) {
                        even.least = std::min(even.least.value_or(*n), *n);
                        even.most = std::max(even.most.value_or(*n), *n);
                    }
                }
    return even;
}

} // namespace glim
