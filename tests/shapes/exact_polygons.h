#pragma once

#include "geometry/vector.h"
#include "units/units.h"

#include <array>
#include <span>

namespace glim::shapes {

/// A triangle of the view plane of which only the part counts where `side`, given at its corners
/// and linear between them, is above zero.
struct CutCover {
    std::array<Point2, 3> corners;
    std::array<double, 3> side;
};

/// The part of `triangle` that no cover covers: a second opinion by CGAL's polygon sets in exact
/// arithmetic, with no grid and no tolerance. Exact for the doubles given, but for the last bit of
/// the result. Any order of corners; what has no area covers nothing.
Area exactly_uncovered(const std::array<Point2, 3>& triangle, std::span<const CutCover> covers);

} // namespace glim::shapes
