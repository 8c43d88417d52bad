#include "remedy/level_frame.h"

#include <Eigen/LU>

namespace glim {

LevelFrame::LevelFrame(const Point& origin, const LampFrame& axes) : origin_(origin)
{
    axes_ << axes.forward.vector(), axes.outboard.vector(), axes.up.vector();
}

Point LevelFrame::into(const Point& vehicle) const { return way_into(vehicle - origin_); }

Point LevelFrame::out_of(const Point& level) const { return origin_ + axes_ * level; }

TriangleMesh LevelFrame::moved(TriangleMesh mesh,
                               Point (LevelFrame::*move)(const Point&) const) const
{
    for (Point& p : mesh.points)
        p = (this->*move)(p);
    return axes_.determinant() < 0 ? turned_over(std::move(mesh)) : mesh;
}

TriangleMesh LevelFrame::into(TriangleMesh vehicle) const
{
    return moved(std::move(vehicle), &LevelFrame::into);
}

TriangleMesh LevelFrame::out_of(TriangleMesh level) const
{
    return moved(std::move(level), &LevelFrame::out_of);
}

} // namespace glim
