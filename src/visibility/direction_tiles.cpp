#include "visibility/direction_tiles.h"

#include "units/trig.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace glim {

namespace {

// 10 degrees: few enough tiles that gathering for each is cheap, small enough that a smooth body
// has contours on a small part of its edges only.
constexpr int tile_deg = 10;
constexpr int tiles_around = 360 / tile_deg;
constexpr int tiles_upward = 180 / tile_deg;

/// A direction on the seam of two tiles may be rounded into either; cones reach over the seam.
constexpr double seam_grain = 1e-9;

int tile_of(const Direction& d)
{
    const Vector& v = d.vector();
    const double longitude = in_degrees(angle_of(v.y(), v.x())) + 180;
    const double latitude = in_degrees(arc_sine(v.z())) + 90;
    const int around = std::clamp(static_cast<int>(longitude / tile_deg), 0, tiles_around - 1);
    const int upward = std::clamp(static_cast<int>(latitude / tile_deg), 0, tiles_upward - 1);
    return upward * tiles_around + around;
}

Vector at(double longitude_deg, double latitude_deg)
{
    const Angle longitude = degrees(longitude_deg);
    const Angle latitude = degrees(latitude_deg);
    return {cos(latitude) * cos(longitude), cos(latitude) * sin(longitude), sin(latitude)};
}

/// Of all points of a tile its corners are furthest from its middle.
DirectionCone cone_about(int tile)
{
    const double west = (tile % tiles_around) * tile_deg - 180;
    const double south = (tile / tiles_around) * tile_deg - 90; // NOLINT(bugprone-integer-division)
    const double half = tile_deg / 2.0;
    const Vector middle = at(west + half, south + half);
    double cosine = 1;
    for (const double upward : {0, tile_deg})
        cosine = std::min(cosine, middle.dot(at(west, south + upward)));
    cosine -= seam_grain;
    return {Direction::along(middle), std::sqrt(1 - cosine * cosine), cosine};
}

} // namespace

DirectionTiles::DirectionTiles(std::span<const Direction> directions)
{
    for (const Direction& d : directions)
        place_of_tile_.emplace(tile_of(d), 0);
    for (auto& [tile, place] : place_of_tile_) {
        place = cones_.size();
        cones_.push_back(cone_about(tile));
    }
}

std::optional<std::size_t> DirectionTiles::place_of(const Direction& d) const
{
    const auto found = place_of_tile_.find(tile_of(d));
    return found != place_of_tile_.end() ? std::optional(found->second) : std::nullopt;
}

} // namespace glim
