#pragma once

#include "drawing/canvas.h"
#include "geometry/triangle_mesh.h"
#include "model/vehicle.h"

#include <array>
#include <string_view>

namespace glim {

/// A look along an axis of the vehicle's frame, so that what is drawn has the frame's coordinates
/// across and up. Axes are 0, 1 and 2 for x, y and z.
struct AxisView {
    int along = 0;  ///< what is looked along
    int across = 1; ///< to the right or to the left
    int up = 2;
    double right = 1; ///< 1 where coordinates grow to the right, else -1
    double rising = 1;

    /// From outside, against what is pushed: along the axis nearest to `push`, the vehicle's up
    /// upwards, or its front where that is looked along.
    static AxisView against(const Direction& push, const Vehicle& vehicle);
    /// Across one of the two axes that such a view shows: a section in which the push is seen.
    static AxisView beside(const AxisView& view, int axis, const Vehicle& vehicle);

    Point2 flat(const Point& p) const { return {right * p[across], rising * p[up]}; }
};

inline constexpr std::array<std::string_view, 3> axis_names = {"x", "y", "z"};

/// A window of the frame laid on a rectangle of a drawing, alike in both ways.
class AxisWindow {
public:
    /// Holds everything between `least` and `most`, flat coordinates in mm.
    AxisWindow(const AxisView& view, const Point2& least, const Point2& most, const Rect& room);

    const Rect& box() const { return box_; }
    const AxisView& view() const { return view_; }
    Length point() const { return point_; } ///< what a point of the drawing stands for
    Point2 at(const Point& p) const { return at(view_.flat(p)); }
    Point2 at(const Point2& flat) const;
    /// Coordinates, in the frame, at the ends of the box.
    std::pair<double, double> across() const;
    std::pair<double, double> up() const;
    double x_of(double across) const;
    double y_of(double up) const;

private:
    AxisView view_;
    Rect box_;
    Point2 least_, most_;
    Length point_;
};

/// The window's rim with round coordinates along it.
void draw_axes(Canvas& canvas, const AxisWindow& window);

} // namespace glim
