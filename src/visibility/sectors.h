#pragma once

#include "geometry/vector.h"

#include <array>
#include <cstdint>

namespace glim {

/// The ways in a view plane, in eighths of a turn: sector s holds those from s eighths to the next,
/// counter-clockwise from across.
inline constexpr int sector_count = 8;
/// One bit a sector.
using Sectors = std::uint8_t;
inline constexpr Sectors all_sectors = 0xFF;
/// Something of every sector.
template <class Value>
using PerSector = std::array<Value, sector_count>;

/// A place in a view plane: convex, counter-clockwise or clockwise; corners may coincide.
using Patch = std::array<Point2, 4>;

/// How far a patch is from a point, mm, and which ways lead to it; from within, all of them. Ways
/// beside it may be given too.
struct PatchSeen {
    double distance_mm;
    Sectors ways;
};
PatchSeen seen_from(const Point2& point, const Patch& patch);

/// The ways that lead into a circle about `centre` from the origin; from within, all of them. Ways
/// beside it may be given too.
Sectors ways_into_circle(const Point2& centre, double radius);

} // namespace glim
