#include "drawing/sight_view.h"

#include "drawing/axis_view.h"
#include "drawing/legend.h"
#include "drawing/picture_colours.h"

#include <algorithm>

namespace glim {

namespace {

constexpr double left_room = 48, right_room = 12, top_room = 8, axis_room = 34, legend_gap = 8;
/// Around what is drawn, as a share of it.
constexpr double margin_share = 0.04;
/// Dark enough for a line on paper; neighbours differ in lightness too.
constexpr std::array row_colours = {Colour{20, 74, 144}, Colour{190, 96, 0}, Colour{0, 110, 90},
                                    Colour{130, 40, 120}};
const std::array<std::vector<double>, 3> dashes = {std::vector<double>{}, std::vector<double>{6, 3},
                                                   std::vector<double>{2, 2}};

Colour colour_of(std::size_t row) { return row_colours[row % row_colours.size()]; }

AxisView axes_of(SightView view)
{
    switch (view) {
    case SightView::plan:
        return {2, 1, 0, 1, 1};
    case SightView::side:
        return {1, 0, 2, 1, 1};
    case SightView::front:
        break;
    }
    return {0, 1, 2, 1, 1};
}

struct Bounds {
    Point2 least = Point2::Constant(1e300), most = Point2::Constant(-1e300);
    void add(const Point2& p)
    {
        least = least.cwiseMin(p);
        most = most.cwiseMax(p);
    }
};

/// Holds the curves, the lens, and what of the vehicle is known.
Bounds bounds_of(const SightLines& lines, const LampSketch& sketch, SightView view)
{
    Bounds bounds;
    for (const LimitCurve& curve : lines.curves)
        if (curve.view == view)
            for (const Point2& p : curve.points)
                bounds.add(p);
    const AxisView axes = axes_of(view);
    bounds.add(axes.flat(lines.lens.least));
    bounds.add(axes.flat(lines.lens.most));
    const double half = in_mm(*sketch.study.vehicle.overall_width) / 2;
    if (view != SightView::side) {
        bounds.add({-half, bounds.most.y()});
        bounds.add({half, bounds.most.y()});
    }
    if (view != SightView::plan)
        bounds.add({bounds.least.x(), 0});
    const Point2 margin = margin_share * (bounds.most - bounds.least);
    bounds.least -= margin;
    bounds.most += margin;
    return bounds;
}

Path path_of(const LimitCurve& curve, const AxisWindow& window)
{
    std::vector<Point2> points;
    for (const Point2& p : curve.points)
        points.push_back(window.at(p));
    return Path().add(std::move(points), curve.closed);
}

void draw_guide(Canvas& canvas, const AxisWindow& window, const Point2& a, const Point2& b,
                const std::vector<double>& dash)
{
    canvas.stroke(segment(window.at(a), window.at(b)),
                  {.colour = {120, 120, 120}, .width = 0.6, .dashes = dash});
}

void draw_vehicle(Canvas& canvas, const AxisWindow& window, const LampSketch& sketch,
                  SightView view)
{
    const auto [left, right] = window.across();
    const auto [bottom, top] = window.up();
    if (view != SightView::side) {
        const double half = in_mm(*sketch.study.vehicle.overall_width) / 2;
        for (const double side : {-half, half})
            draw_guide(canvas, window, {side, bottom}, {side, top}, {});
        draw_guide(canvas, window, {0, bottom}, {0, top}, {8, 3, 2, 3});
    }
    if (view != SightView::plan)
        draw_guide(canvas, window, {left, 0}, {right, 0}, {});
}

/// Curves of one row in one view, told apart by their dashes.
std::size_t place_in_row(const SightLines& lines, const LimitCurve& curve)
{
    std::size_t place = 0;
    for (const LimitCurve& other : lines.curves) {
        if (&other == &curve)
            break;
        place += other.row == curve.row && other.view == curve.view ? 1 : 0;
    }
    return place;
}

void draw(Canvas& canvas, const SightLines& lines, const LampSketch& sketch,
          const AxisWindow& window, SightView view)
{
    canvas.clipped(path_of(window.box()), [&] {
        for (const LimitCurve& curve : lines.curves)
            if (curve.view == view)
                canvas.fill(path_of(curve, window),
                            {.colour = colour_of(curve.row), .opacity = 0.08});
        draw_vehicle(canvas, window, sketch, view);
        for (const LimitCurve& curve : lines.curves)
            if (curve.view == view)
                canvas.stroke(path_of(curve, window),
                              {.colour = colour_of(curve.row),
                               .width = 1.1,
                               .dashes = dashes[place_in_row(lines, curve) % dashes.size()]});
        const AxisView axes = axes_of(view);
        const Point2 a = window.at(axes.flat(lines.lens.least));
        const Point2 b = window.at(axes.flat(lines.lens.most));
        const Rect lens{std::min(a.x(), b.x()) - 1, std::min(a.y(), b.y()) - 1,
                        std::abs(b.x() - a.x()) + 2, std::abs(b.y() - a.y()) + 2};
        canvas.fill(path_of(lens), {.colour = lit_colour});
        canvas.stroke(path_of(lens), {.colour = rim_colour, .width = 0.7});
    });
    draw_axes(canvas, window);
}

Legend legend_of(const SightLines& lines, SightView view, double width)
{
    std::vector<LegendEntry> entries;
    for (const LimitCurve& curve : lines.curves) {
        if (curve.view != view)
            continue;
        const Pen pen{.colour = colour_of(curve.row),
                      .width = 1.3,
                      .dashes = dashes[place_in_row(lines, curve) % dashes.size()]};
        entries.push_back({[pen](Canvas& canvas, const Rect& sample) {
                               canvas.stroke(segment({sample.x, sample.centre().y()},
                                                     {sample.right(), sample.centre().y()}),
                                             pen);
                           },
                           lines.rows[curve.row].row.id + ", " + curve.label});
    }
    entries.push_back({[](Canvas& canvas, const Rect& sample) {
                           canvas.fill(path_of(sample), {.colour = lit_colour});
                           canvas.stroke(path_of(sample), {.colour = rim_colour, .width = 0.7});
                       },
                       "lens"});
    return Legend(std::move(entries), width);
}

std::string caption_words(SightView view)
{
    switch (view) {
    case SightView::plan:
        return "The outline of the space that has to stay empty, at the heights of the lens. x: "
               "ahead of the lens, y: from the median plane (dash-dotted) towards the lamp's side; "
               "the sides of the vehicle are thin lines.";
    case SightView::side:
        return "What stays below or above the whole outline is free wherever it is across the "
               "vehicle; on the median plane the dashed one counts. The thin line is the ground.";
    case SightView::front:
        break;
    }
    return "Sections of the space, so far ahead of the lens. What stays outside a section is free "
           "there.";
}

} // namespace

Figure sight_view(const SightLines& lines, const LampSketch& sketch, SightView view,
                  const SightViewSize& size)
{
    const Bounds bounds = bounds_of(lines, sketch, view);
    const Rect room{left_room, top_room, size.width - left_room - right_room, size.most_height};
    const auto window =
        std::make_shared<AxisWindow>(axes_of(view), bounds.least, bounds.most, room);
    const auto legend = std::make_shared<Legend>(legend_of(lines, view, size.width - left_room));
    const double legend_top = window->box().bottom() + axis_room + legend_gap;
    const auto shown = std::make_shared<SightLines>(lines);
    const auto drawn = std::make_shared<LampSketch>(sketch);

    Figure figure;
    figure.drawing = {size.width, legend_top + legend->height() + 4, [=](Canvas& canvas) {
                          draw(canvas, *shown, *drawn, *window, view);
                          legend->draw(canvas, {left_room, legend_top});
                      }};
    figure.title = sight_view_words[static_cast<std::size_t>(view)].title;
    figure.caption = caption_words(view);
    figure.alt = figure.title + ". " + figure.caption;
    return figure;
}

} // namespace glim
