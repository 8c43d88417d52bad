#include "drawing/chart_ticks.h"
#include "drawing/legend.h"
#include "drawing/map_frame.h"
#include "words/chart_words.h"
#include "words/numbers.h"

#include <algorithm>

namespace glim {

namespace {

constexpr double left_of_plot = 46, below_plot = 34, above_plot = 18;
constexpr double least_side = 80; ///< lower is hard to read
constexpr double tick_length = 3;
constexpr double to_label = 6; ///< from the plot to a tick's label; marks may reach so far
constexpr double points_a_tick = 34;
constexpr Colour not_asked{236, 236, 236};
constexpr Pen frame_pen{.colour = {90, 90, 90}, .width = 0.6};

struct Scales {
    double h = 0, v = 0; ///< points a degree

    bool equal() const { return h == v; }
};

/// Equal, unless one side would be less than can be read and there is room for more.
Scales scales_of(double h_span, double v_span, double width, double height)
{
    const double equal = std::min(width / h_span, height / v_span);
    return {std::max(equal, std::min(least_side, width) / h_span),
            std::max(equal, std::min(least_side, height) / v_span)};
}

/// The first of these that is no longer than the axis.
std::string longest_that_fits(const std::vector<std::string>& words, double length)
{
    for (const std::string& w : words)
        if (extent_of({.words = w, .size = chart_text_size}).width <= length)
            return w;
    return words.back();
}

/// Everything that the frame's functions need, by value.
struct Plane {
    FieldRectangle range;
    BearingSpeech speech;
    Scales scales;
    Rect plot;

    double x_of(Angle h) const { return plot.x + in_degrees(h - range.h_least) * scales.h; }
    double y_of(Angle v) const { return plot.bottom() - in_degrees(v - range.v_least) * scales.v; }

    void draw_ticks(Canvas& canvas) const
    {
        const auto count = [](double length) {
            return std::max(2, static_cast<int>(length / points_a_tick) + 1);
        };
        for (const Angle h : angle_ticks(range.h_least, range.h_most, count(plot.width))) {
            const double x = x_of(h), y = plot.bottom();
            canvas.stroke(segment({x, y}, {x, y + tick_length}), frame_pen);
            canvas.text(
                {x, y + to_label},
                {.words = typeset_angle(h), .size = chart_text_size, .align = Align::centre});
        }
        for (const Angle v : angle_ticks(range.v_least, range.v_most, count(plot.height))) {
            const Text label{
                .words = typeset_angle(v), .size = chart_text_size, .align = Align::right};
            const double x = plot.x, y = y_of(v);
            canvas.stroke(segment({x - tick_length, y}, {x, y}), frame_pen);
            canvas.text({x - to_label, y - extent_of(label).height / 2}, label);
        }
    }

    void draw_words(Canvas& canvas) const
    {
        const AxisEnds h = ends_of_h(speech), v = ends_of_v();
        const std::string low_h = "\u2190 " + h.negative, high_h = h.positive + " \u2192";
        const std::string low_v = "\u2190 " + v.negative, high_v = v.positive + " \u2192";
        const std::string stretch =
            scales.equal() ? "" : ", drawn " + rounded(scales.v / scales.h, 1) + " times as large";
        const auto join = [](const std::string& low, const std::string& middle,
                             const std::string& high) {
            return low + "   " + middle + "   " + high;
        };
        canvas.text({plot.centre().x(), plot.bottom() + to_label + 12},
                    {.words = join(low_h, "H, longitude", high_h),
                     .size = chart_text_size,
                     .align = Align::centre});
        canvas.upward_text(
            {plot.x - left_of_plot + 2, plot.centre().y()},
            {.words = longest_that_fits({join(low_v, "V, latitude" + stretch, high_v),
                                         join(low_v, "V, latitude", high_v),
                                         join(low_v, "V", high_v), low_v + " V " + high_v},
                                        plot.height + 16),
             .size = chart_text_size});
    }

    void draw_zero_lines(Canvas& canvas) const
    {
        const Pen pen{.colour = white, .width = 0.6, .dashes = {1, 2}, .opacity = 0.9};
        if (range.h_least < Angle() && range.h_most > Angle())
            canvas.stroke(segment({x_of({}), plot.y}, {x_of({}), plot.bottom()}), pen);
        if (range.v_least < Angle() && range.v_most > Angle())
            canvas.stroke(segment({plot.x, y_of({})}, {plot.right(), y_of({})}), pen);
    }
};

} // namespace

MapFrame plane_frame(const Field& field, const BearingSpeech& speech, const Rect& room)
{
    const FieldRectangle range = around(field);
    const double h_span = in_degrees(range.h_most - range.h_least);
    const double v_span = in_degrees(range.v_most - range.v_least);
    const Scales scales =
        scales_of(h_span, v_span, room.width - left_of_plot, room.height - above_plot - below_plot);
    const Rect plot{room.x + left_of_plot, room.y + above_plot, h_span * scales.h,
                    v_span * scales.v};
    const Plane plane{range, speech, scales, plot};
    return {
        .plot = plot,
        .whole = {room.x, room.y, left_of_plot + plot.width, above_plot + plot.height + below_plot},
        .point_of = [plane](const Bearing& b) { return Point2(plane.x_of(b.h), plane.y_of(b.v)); },
        .bearing_at =
            [plane](const Point2& p) {
                return std::optional(Bearing{
                    plane.range.h_least + degrees((p.x() - plane.plot.x) / plane.scales.h),
                    plane.range.v_least + degrees((plane.plot.bottom() - p.y()) / plane.scales.v)});
            },
        .draw_under = [plot](Canvas& canvas) { canvas.fill(path_of(plot), {not_asked}); },
        .draw_over =
            [plane](Canvas& canvas) {
                plane.draw_zero_lines(canvas);
                canvas.stroke(path_of(plane.plot), frame_pen);
                plane.draw_ticks(canvas);
                plane.draw_words(canvas);
            }};
}

} // namespace glim
