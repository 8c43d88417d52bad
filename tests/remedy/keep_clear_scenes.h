#pragma once

#include "remedy/keep_clear_set.h"
#include "shapes/simple_shapes.h"
#include "units/trig.h"

namespace glim::test {

// Lamps in their own level frame, and what the definition says of them.

inline FieldRectangle field(double h1, double h2, double v1, double v2)
{
    return {degrees(h1), degrees(h2), degrees(v1), degrees(v2)};
}

/// Counter-clockwise.
inline ConvexPolygon rectangle(double x1, double x2, double y1, double y2)
{
    return {{x1, y1}, {x2, y1}, {x2, y2}, {x1, y2}};
}

inline HeightSpan levels(double bottom, double top)
{
    return {millimetres(bottom), millimetres(top)};
}

inline KeepClearSet set_of(const TriangleMesh& lit, const std::vector<FieldRectangle>& toward,
                           const HeightSpan& between = levels(-500, 500))
{
    std::vector<SightSheaf> sheaves;
    for (const FieldRectangle& r : toward)
        sheaves.emplace_back(lit, r);
    return KeepClearSet(std::move(sheaves), between);
}

/// A lens swept back and leaning: none of its edges is upright or level.
inline TriangleMesh raked_lens()
{
    TriangleMesh lens = shapes::plate(Point(0, 0, 0), 150, 60, 2);
    for (Point& p : lens.points)
        p.x() -= 0.4 * p.z() + 0.3 * p.y();
    return lens;
}

/// A lens wrapped around a corner, which turns away from part of its field.
inline TriangleMesh wrapped_lens()
{
    return shapes::cylinder_wall(120, 60, degrees(-10), degrees(80), 12);
}

} // namespace glim::test
