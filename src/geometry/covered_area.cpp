#include "geometry/covered_area.h"

#include "geometry/triangle_tree.h"
#include "geometry/turn.h"

#include <algorithm>

namespace glim {

namespace {

/// Whether a line along one edge of `a` has all of `b` on its other side, or on it.
bool parted_by_an_edge(const PlaneTriangle& a, const PlaneTriangle& b)
{
    const int winding = turn_of(a[0], a[1], a[2]);
    for (int i = 0; i < 3; ++i) {
        const Point2& from = a[i];
        const Point2& to = a[(i + 1) % 3];
        if (std::all_of(b.begin(), b.end(),
                        [&](const Point2& p) { return winding * turn_of(from, to, p) <= 0; }))
            return true;
    }
    return false;
}

/// Triangles without area overlap nothing.
bool overlap(const PlaneTriangle& a, const PlaneTriangle& b)
{
    return !parted_by_an_edge(a, b) && !parted_by_an_edge(b, a);
}

} // namespace

// Each triangle adds what those before it leave of it. So the pieces to unite stay few, and what
// nothing overlaps is closed form.
Area covered_area(std::span<const PlaneTriangle> triangles)
{
    const TriangleTree tree(triangles);
    const double overlapping = 0;
    Area sum;
    for (std::size_t i = 0; i < triangles.size(); ++i) {
        std::vector<std::size_t> before;
        tree.visit(box_of(triangles[i]), overlapping, [&](std::size_t j) {
            if (j < i && overlap(triangles[i], triangles[j]))
                before.push_back(j);
        });
        std::sort(before.begin(), before.end());
        std::vector<ConvexPolygon> covers;
        covers.reserve(before.size());
        for (const std::size_t j : before)
            covers.emplace_back(triangles[j].begin(), triangles[j].end());
        sum += uncovered_area(triangles[i], covers);
    }
    return sum;
}

} // namespace glim
