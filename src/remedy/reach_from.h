#pragma once

#include "geometry/vector.h"

#include <array>
#include <cstddef>

namespace glim {

/// A convex piece of a facet: a triangle cut by three lines has six corners at most. Level frame.
struct FacetPiece {
    std::array<Point, 8> corners;
    std::size_t count = 0;

    bool empty() const { return count == 0; }
    void add(const Point& p) { corners[count++] = p; }
    /// What of it lies where across.p <= bound, seen in plan.
    FacetPiece within(const Point2& across, double bound) const;
};

/// Up or down: the same is asked of a set turned upside down.
struct HeightRule {
    double sign;  ///< +1: heights as they are; -1: upside down
    double slope; ///< tan V, of the set so turned
};

/// The largest of sign z + slope r over the piece, r the level distance to `place`, mm. Exact for
/// slopes of 0 and more; for others not too low, and at most 0.001 mm too high.
double reach_from(const FacetPiece& piece, const HeightRule& rule, const Point2& place);

} // namespace glim
