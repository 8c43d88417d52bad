#pragma once

#include "geometry/direction.h"

#include <cstdint>

namespace glim::shapes {

/// Numbers that look random and are the same on every machine for the same seed: a 64-bit counter
/// whose every step is mixed. Good for scattering scenes, for nothing else.
class RandomNumbers {
public:
    explicit RandomNumbers(std::uint64_t seed) : state_(seed) {}

    /// In [least, most).
    double real(double least, double most);
    /// Spread evenly over the orders of magnitude of [least, most). Requires: 0 < least.
    double magnitude(double least, double most);
    /// In [least, most].
    int whole(int least, int most);
    /// True in so many of a hundred cases.
    bool percent(int share) { return whole(0, 99) < share; }
    /// Any way, all alike.
    Direction direction();
    /// Perpendicular to `axis`, any way round, all alike.
    Direction across(const Direction& axis);
    /// As the ones above, of a length in [least, most).
    Vector vector(double least, double most);
    Vector across(const Direction& axis, double least, double most);
    /// Each of the three in [least, most).
    Vector sides(double least, double most);

    template <class List>
    const auto& one_of(const List& list)
    {
        return list[static_cast<std::size_t>(whole(0, static_cast<int>(list.size()) - 1))];
    }

private:
    std::uint64_t next();
    std::uint64_t state_;
};

} // namespace glim::shapes
