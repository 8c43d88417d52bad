#include "geometry/covered_area.h"

#include "geometry/triangle_tree.h"

#include <algorithm>

namespace glim {

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
            if (j < i)
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
