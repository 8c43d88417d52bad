#include "drawing/legend.h"
#include "drawing/map_frame.h"
#include "words/chart_words.h"

#include "units/trig.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr Angle ring_step = degrees(30);
constexpr double label_room = 18;  ///< above and below; beside, what the words take
constexpr double around_field = 8; ///< degrees shown about the field
constexpr Colour not_asked{236, 236, 236};
Pen ring_pen() { return {.colour = {110, 110, 110}, .width = 0.5, .dashes = {2, 2}}; }
constexpr Pen frame_pen{.colour = {90, 90, 90}, .width = 0.6};

/// Straight behind is all of the outermost ring at once; from a hair beside it, lines that pass
/// there run along that ring.
constexpr Angle almost_behind = degrees(179.99);

/// Degrees to the right of the axis and above it.
Point2 polar_of(const Bearing& b)
{
    const Bearing beside{std::clamp(b.h, -almost_behind, almost_behind), b.v};
    const Vector d = direction_of(beside, LampFrame{}).vector();
    const double aside = std::hypot(d.y(), d.z());
    const double from_axis = in_degrees(angle_of(aside, d.x()));
    return aside > 0 ? Point2(from_axis / aside * Point2(d.y(), d.z())) : Point2(from_axis, 0);
}

std::optional<Bearing> bearing_of_polar(const Point2& p)
{
    const Angle from_axis = degrees(p.norm());
    if (from_axis > degrees(180))
        return std::nullopt;
    if (from_axis == Angle())
        return Bearing{};
    const Point2 aside = sin(from_axis) / p.norm() * p;
    return bearing_of(Direction::along({cos(from_axis), aside.x(), aside.y()}), LampFrame{});
}

/// Degrees: what of the rings is shown.
struct Shown {
    Point2 least = Point2::Zero(), most = Point2::Zero();

    void add(const Point2& p)
    {
        least = least.cwiseMin(p);
        most = most.cwiseMax(p);
    }
    double width() const { return most.x() - least.x(); }
    double height() const { return most.y() - least.y(); }
};

Shown shown_of(const Field& field)
{
    constexpr int parts = 90;
    Shown shown;
    for (const FieldRectangle& r : field.rectangles)
        for (int i = 0; i <= parts; ++i)
            for (int j = 0; j <= parts; ++j)
                shown.add(polar_of({r.h_least + (r.h_most - r.h_least) * (double(i) / parts),
                                    r.v_least + (r.v_most - r.v_least) * (double(j) / parts)}));
    shown.least -= Point2::Constant(around_field);
    shown.most += Point2::Constant(around_field);
    return shown;
}

/// Everything that the frame's functions need, by value.
struct Polar {
    Shown shown;
    BearingSpeech speech;
    double scale; ///< points a degree
    Rect plot;

    Point2 axis() const { return on_page(Point2::Zero()); }
    Point2 on_page(const Point2& polar) const
    {
        return {plot.x + (polar.x() - shown.least.x()) * scale,
                plot.bottom() - (polar.y() - shown.least.y()) * scale};
    }
    Point2 from_page(const Point2& p) const
    {
        return {shown.least.x() + (p.x() - plot.x) / scale,
                shown.least.y() + (plot.bottom() - p.y()) / scale};
    }

    Angle farthest() const
    {
        const double x = std::max(-shown.least.x(), shown.most.x());
        const double y = std::max(-shown.least.y(), shown.most.y());
        return degrees(std::min(180.0, std::hypot(x, y)));
    }

    void draw_rings(Canvas& canvas) const
    {
        canvas.clipped(path_of(plot), [&] {
            for (Angle a = ring_step; a <= farthest(); a += ring_step)
                canvas.stroke(circle_at(axis(), in_degrees(a) * scale), ring_pen());
            canvas.stroke(segment({plot.x, axis().y()}, {plot.right(), axis().y()}), ring_pen());
            canvas.stroke(segment({axis().x(), plot.y}, {axis().x(), plot.bottom()}), ring_pen());
        });
    }

    struct RingLabel {
        Text text;
        Rect rect;
    };
    /// Just inside each ring where it leaves the plot below, or below the axis.
    std::vector<RingLabel> ring_labels() const
    {
        std::vector<RingLabel> labels;
        for (Angle a = ring_step; a <= farthest(); a += ring_step) {
            const double ring = in_degrees(a), down = std::min(ring, -shown.least.y());
            const Text text{.words = typeset_angle(a), .size = chart_text_size, .halo = white};
            const Extent size = extent_of(text);
            const Point2 foot = on_page({std::sqrt(ring * ring - down * down), -down});
            const double x = down == ring ? foot.x() + 2 : foot.x() - size.width - 3;
            const Rect rect{x, foot.y() - size.height - 1, size.width, size.height};
            if (rect.right() <= plot.right())
                labels.push_back({text, rect});
        }
        return labels;
    }
    std::vector<Rect> label_rects() const
    {
        std::vector<Rect> rects;
        for (const RingLabel& label : ring_labels())
            rects.push_back(label.rect);
        return rects;
    }

    void draw_words(Canvas& canvas) const
    {
        const AxisEnds h = ends_of_h(speech), v = ends_of_v();
        const auto word = [&](const Point2& at, const std::string& words, Align align) {
            canvas.text(at, {.words = words, .size = chart_text_size, .align = align});
        };
        const double half_line =
            extent_of({.words = h.negative, .size = chart_text_size}).height / 2;
        word({plot.x - 5, axis().y() - half_line}, h.negative, Align::right);
        word({plot.right() + 5, axis().y() - half_line}, h.positive, Align::left);
        word({axis().x(), plot.y - label_room + 6}, v.positive, Align::centre);
        word({axis().x(), plot.bottom() + 2}, v.negative, Align::centre);
    }
};

} // namespace

MapFrame polar_frame(const Field& field, const BearingSpeech& speech, const Rect& room)
{
    const Shown shown = shown_of(field);
    const FieldRectangle range = around(field);
    const AxisEnds ends = ends_of_h(speech);
    const auto beside = [](const std::string& words) {
        return extent_of({.words = words, .size = chart_text_size}).width + 8;
    };
    const double left = beside(ends.negative), right = beside(ends.positive);
    const double scale = std::min((room.width - left - right) / shown.width(),
                                  (room.height - 2 * label_room) / shown.height());
    const Rect plot{room.x + left, room.y + label_room, scale * shown.width(),
                    scale * shown.height()};
    const Polar polar{shown, speech, scale, plot};
    return {.plot = plot,
            .whole = {room.x, room.y, left + plot.width + right, plot.height + 2 * label_room},
            .point_of = [polar](const Bearing& b) { return polar.on_page(polar_of(b)); },
            .bearing_at = [polar](const Point2& p) { return bearing_of_polar(polar.from_page(p)); },
            .draw_under = [plot](Canvas& canvas) { canvas.fill(path_of(plot), {not_asked}); },
            .draw_over =
                [polar](Canvas& canvas) {
                    polar.draw_rings(canvas);
                    canvas.stroke(path_of(polar.plot), frame_pen);
                    for (const Polar::RingLabel& label : polar.ring_labels())
                        canvas.text({label.rect.x, label.rect.y}, label.text);
                    polar.draw_words(canvas);
                },
            .labels = polar.label_rects(),
            .curved = true,
            .joins_behind = range.h_least == degrees(-180) && range.h_most == degrees(180)};
}

} // namespace glim
