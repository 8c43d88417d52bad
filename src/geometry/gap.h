#pragma once

#include "geometry/triangle_tree.h"

#include <limits>
#include <optional>

namespace glim {

/// The shortest way between two sets of triangles in a plane: 0 where they touch or overlap.
struct Gap {
    Length distance;
    Point2 from, to; ///< the two ends; one place common to both sets where the distance is 0
    std::size_t from_triangle = 0, to_triangle = 0; ///< where the ends lie, in their sets
};

/// Triangles of no area are the lines or points that they are.
Gap gap_between(const PlaneTriangle& a, const PlaneTriangle& b);

/// Of equally short ways, the one from the triangle that comes first in `a`, then to the one that
/// comes first in `b`. Nothing if one set is empty.
std::optional<Gap> gap_between(std::span<const PlaneTriangle> a, std::span<const PlaneTriangle> b);

/// The same from one point; `from_triangle` is 0.
std::optional<Gap> gap_between(const Point2& p, std::span<const PlaneTriangle> b);

/// One set of triangles, prepared for being asked often.
class TriangleSet {
public:
    explicit TriangleSet(std::vector<PlaneTriangle> triangles)
        : triangles_(std::move(triangles)), tree_(triangles_)
    {
    }

    std::span<const PlaneTriangle> triangles() const { return triangles_; }
    const TriangleTree& tree() const { return tree_; }

private:
    std::vector<PlaneTriangle> triangles_;
    TriangleTree tree_;
};

/// As above; but nothing also where the gap is longer than `reach`.
std::optional<Gap> gap_between(const TriangleSet& a, const TriangleSet& b,
                               Length reach = millimetres(std::numeric_limits<double>::infinity()));

} // namespace glim
