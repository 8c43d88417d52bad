#pragma once

#include "geometry/direction.h"

#include <map>
#include <optional>
#include <span>
#include <vector>

namespace glim {

/// All directions within an angle of an axis, the rim included.
struct DirectionCone {
    Direction axis;
    double sine, cosine; ///< of the half angle, which is below 90 degrees
};

/// The sphere of directions cut into tiles of 10 by 10 degrees of longitude and latitude about z,
/// of which those are held that some directions need.
class DirectionTiles {
public:
    explicit DirectionTiles(std::span<const Direction> directions);

    /// A cone about each held tile, in an order that the directions alone decide.
    const std::vector<DirectionCone>& cones() const { return cones_; }
    /// The place of the held tile that a direction lies in, whether it was given or not.
    std::optional<std::size_t> place_of(const Direction& d) const;

private:
    std::map<int, std::size_t> place_of_tile_;
    std::vector<DirectionCone> cones_;
};

} // namespace glim
