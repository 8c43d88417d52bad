#pragma once

#include <cstdint>
#include <vector>

namespace glim {

/// A sequence of points that fill the unit cube more evenly than chance does (I. M. Sobol', USSR
/// Comput. Math. Math. Phys. 7, 1967): one coordinate a dimension from the digits of the point's
/// number. The polynomials are the primitive ones in order of their degree; the free odd numbers
/// are drawn from a fixed generator.
///
/// Points are shifted digit by digit by a pattern that goes by `seed` and `shift`: each shift is as
/// even as the sequence itself, and means over different shifts are independent of each other, so
/// that their spread tells how sure their mean is.
class SobolSequence {
public:
    SobolSequence(std::size_t dimensions, std::uint64_t seed);

    /// All coordinates of a point, each strictly between 0 and 1. The same on every machine.
    std::vector<double> point(std::uint32_t shift, std::uint32_t number) const;
    std::size_t dimensions() const { return directions_.size(); }

private:
    static constexpr int digits = 32;
    using Directions = std::vector<std::uint32_t>; ///< one a digit
    std::vector<Directions> directions_;           ///< one a dimension
    std::uint64_t seed_;
};

} // namespace glim
