#include "drawing/axis_view.h"

#include "drawing/chart_ticks.h"
#include "drawing/legend.h"
#include "words/chart_words.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr double tick = 4;
constexpr int most_ticks = 7;
/// So much room a figure below the axis has at the least, points.
constexpr double tick_room = 26;

int main_axis(const Vector& v)
{
    int axis = 0;
    v.cwiseAbs().maxCoeff(&axis);
    return axis;
}

/// Seen by an eye out along `toward`, an axis vector.
AxisView view_from(int along, double toward, int up, double rising)
{
    const Vector eye = toward * Vector::Unit(along);
    const Vector right = (rising * Vector::Unit(up)).cross(eye);
    const int across = main_axis(right);
    return {along, across, up, right[across], rising};
}

} // namespace

AxisView AxisView::against(const Direction& push, const Vehicle& vehicle)
{
    const int along = main_axis(push.vector());
    const double toward = push.vector()[along] > 0 ? -1 : 1;
    int up = main_axis(vehicle.up.vector());
    double rising = vehicle.up.vector()[up] > 0 ? 1 : -1;
    if (up == along) {
        up = main_axis(vehicle.forward.vector());
        rising = vehicle.forward.vector()[up] > 0 ? 1 : -1;
    }
    return view_from(along, toward, up, rising);
}

AxisView AxisView::beside(const AxisView& view, int axis, const Vehicle& vehicle)
{
    const int vertical = main_axis(vehicle.up.vector());
    const int up = axis == vertical ? main_axis(vehicle.forward.vector()) : vertical;
    const double rising = up == vertical ? (vehicle.up.vector()[up] > 0 ? 1 : -1)
                                         : (vehicle.forward.vector()[up] > 0 ? 1 : -1);
    const double toward = axis == view.across ? view.right : view.rising;
    return view_from(axis, toward, up, rising);
}

AxisWindow::AxisWindow(const AxisView& view, const Point2& least, const Point2& most,
                       const Rect& room)
    : view_(view)
{
    const Point2 middle = (least + most) / 2;
    const double scale =
        std::max((most - least).x() / room.width, (most - least).y() / room.height);
    point_ = millimetres(scale);
    const Point2 half = (most - least) / 2;
    least_ = middle - half;
    most_ = middle + half;
    const Point2 size = (most_ - least_) / scale;
    box_ = {room.x + (room.width - size.x()) / 2, room.y, size.x(), size.y()};
}

Point2 AxisWindow::at(const Point2& flat) const
{
    const double scale = in_mm(point_);
    return {box_.x + (flat.x() - least_.x()) / scale,
            box_.bottom() - (flat.y() - least_.y()) / scale};
}

std::pair<double, double> AxisWindow::across() const
{
    return std::minmax(view_.right * least_.x(), view_.right * most_.x());
}

std::pair<double, double> AxisWindow::up() const
{
    return std::minmax(view_.rising * least_.y(), view_.rising * most_.y());
}

double AxisWindow::x_of(double across) const { return at(Point2(view_.right * across, 0.0)).x(); }

double AxisWindow::y_of(double up) const { return at(Point2(0.0, view_.rising * up)).y(); }

void draw_axes(Canvas& canvas, const AxisWindow& window)
{
    const Rect& box = window.box();
    const Pen pen{.colour = {90, 90, 90}, .width = 0.6};
    canvas.stroke(path_of(box), pen);
    const double line = extent_of({.words = "0", .size = chart_text_size}).height;
    const AxisView& view = window.view();
    const auto [left, right] = window.across();
    const int most_along = std::clamp(static_cast<int>(box.width / tick_room), 2, most_ticks);
    for (const double mm : area_ticks_mm2(left, right, most_along)) {
        const double x = window.x_of(mm);
        canvas.stroke(segment({x, box.bottom()}, {x, box.bottom() + tick}), pen);
        canvas.text({x, box.bottom() + tick + 1},
                    {.words = typeset_figure(mm), .size = chart_text_size, .align = Align::centre});
    }
    canvas.text({box.centre().x(), box.bottom() + tick + line + 2},
                {.words = std::string(axis_names[view.across]) + " (mm)",
                 .size = chart_text_size,
                 .align = Align::centre});
    const auto [bottom, top] = window.up();
    for (const double mm : area_ticks_mm2(bottom, top, most_ticks)) {
        const double y = window.y_of(mm);
        canvas.stroke(segment({box.x - tick, y}, {box.x, y}), pen);
        canvas.text({box.x - tick - 2, y - line / 2},
                    {.words = typeset_figure(mm), .size = chart_text_size, .align = Align::right});
    }
    canvas.upward_text(
        {box.x - 38, box.centre().y()},
        {.words = std::string(axis_names[view.up]) + " (mm)", .size = chart_text_size});
}

} // namespace glim
