#pragma once

#include "geometry/triangle_mesh.h"

namespace glim {

/// Points that differ in at least one bit, numbered from 0 in the order in which they came.
/// -0 counts as 0. There is no distance within which points become one: a gap stays a gap.
///
///     PointTable table(facet_count / 2);
///     const std::uint32_t place = table.add(corner);
///     mesh.points = table.take_points();
class PointTable {
public:
    /// `expected` is a hint, so that the table need not grow.
    explicit PointTable(std::size_t expected = 0);

    /// The number of `p`, the old one if the point is there already.
    /// Requires: finite coordinates; fewer than 2^32 - 1 points.
    std::uint32_t add(const Point& p);
    /// All points in their order; the table is empty afterwards.
    std::vector<Point> take_points();

private:
    /// A place among the points and the upper half of its hash, which saves most comparisons.
    struct Slot {
        std::uint32_t place;
        std::uint32_t tag;
    };
    void set_size(std::size_t slots);
    std::size_t slot_for(const Point& p, std::uint64_t hash) const;

    std::vector<Point> points_;
    std::vector<Slot> slots_; ///< a power of two of them, at most half in use
};

/// The same facets on points that are distinct to the last bit (-0 counts as 0); points keep the
/// order of their first use, and points without a facet are gone. Facets are kept, degenerate ones
/// too.
TriangleMesh welded(const TriangleMesh& mesh);

} // namespace glim
