#pragma once

#include "geometry/bearing.h"
#include "geometry/triangle_mesh.h"

namespace glim {

/// A lamp's level frame (see SightSheaf) and how it lies in the vehicle's. Of a right lamp it is a
/// mirror image: facets are turned over on the way.
class LevelFrame {
public:
    LevelFrame(const Point& origin, const LampFrame& axes);

    Point into(const Point& vehicle) const;
    Point out_of(const Point& level) const;
    /// Of a displacement or a normal.
    Vector way_into(const Vector& vehicle) const { return axes_.transpose() * vehicle; }
    TriangleMesh into(TriangleMesh vehicle) const;
    TriangleMesh out_of(TriangleMesh level) const;

private:
    TriangleMesh moved(TriangleMesh mesh, Point (LevelFrame::*move)(const Point&) const) const;

    Point origin_;
    Eigen::Matrix3d axes_; ///< columns
};

} // namespace glim
