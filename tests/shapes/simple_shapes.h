#pragma once

#include "geometry/placement.h"

namespace glim::shapes {

// Bodies whose areas are known on paper. Frame: x ahead, y left, z up, mm. Lit faces look along +x
// unless said otherwise.

/// A rectangle in a plane x = const, facing +x, in `cells` by `cells` pairs of triangles.
TriangleMesh plate(const Point& centre, double width_y, double height_z, int cells = 1);
/// A wall at x, from y_least to y_most and z_least to z_most.
TriangleMesh wall(double x, double y_least, double y_most, double z_least, double z_most);
/// A regular polygon of `corners` inscribed in a circle, at x = 0, facing +x.
TriangleMesh disc(double radius, int corners);
/// A closed ball of latitude bands; facets lie inside the true ball.
TriangleMesh ball(double radius, int around);
/// The half of `ball` with x > 0, open at its base.
TriangleMesh dome(double radius, int around);
/// The flat base of the dome, facing -x.
TriangleMesh dome_base(double radius, int around);
/// Part of a vertical cylinder, normals outward from azimuth p1 to p2 (degrees from +x towards +y).
TriangleMesh cylinder_wall(double radius, double height, Angle p1, Angle p2, int strips);
/// The four inner walls of a rectangular recess from x = 0 to x = depth.
TriangleMesh recess_walls(double width_y, double height_z, double depth);
/// The inner wall of a round bore from x = 0 to x = depth.
TriangleMesh bore_wall(double radius, double depth, int around);
/// `count` upright ribs from x = 0 to x = depth; each is a closed box of `width` in y at the end of
/// a pitch, running from -height to +height in z; the first pitch begins at y_least.
TriangleMesh ribs(double y_least, double pitch, double width, double depth, double height,
                  int count);
TriangleMesh box(const Point& least, const Point& most);

TriangleMesh joined(const TriangleMesh& a, const TriangleMesh& b);
TriangleMesh moved(const TriangleMesh& mesh, const Vector& by);
/// Turned about the vertical through the origin, from +x towards +y.
TriangleMesh turned(const TriangleMesh& mesh, Angle by);

} // namespace glim::shapes
