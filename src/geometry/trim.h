#pragma once

#include "geometry/direction.h"
#include "geometry/triangle_mesh.h"

#include <optional>

namespace glim {

/// Which part of a surface is meant, where that is less than the whole. What is given holds
/// together: a point belongs if every border lets it in.
struct Trim {
    /// Points nearer than this, in space, to an open edge of the surface are left out.
    std::optional<Length> inset;
    /// A closed outline; empty: none. A point is within if it is so in the projection along the
    /// axis. The outline must not cross itself there.
    std::vector<Point> curve;
    std::optional<Box> box;
};

/// The part of `mesh` that the trim leaves, facets cut where a border runs through them, each wound
/// as before; `axis` is what the curve is projected along. Cuts by box and curve are exact but for
/// rounding, and so is an inset along straight edges of a plane piece; round an edge's end it is a
/// polygon (see inset.h). Nothing if the curve crosses itself or encloses nothing.
std::optional<TriangleMesh> trimmed(const TriangleMesh& mesh, const Trim& trim,
                                    const Direction& axis);

/// The part of `mesh` within a convex outline, both seen along `axis`: facets cut where it runs
/// through them, each wound as before. Points of no facet left are gone. Requires: three corners or
/// more, in order, either way round.
TriangleMesh part_within(const TriangleMesh& mesh, std::span<const Point> outline,
                         const Direction& axis);

} // namespace glim
