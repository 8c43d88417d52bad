#include "drawing/relief_section.h"

#include "drawing/chart_ticks.h"
#include "drawing/legend.h"
#include "drawing/map_chart.h"
#include "words/chart_words.h"
#include "words/numbers.h"

#include <algorithm>
#include <memory>

namespace glim {

namespace {

constexpr Rect room{54, 14, chart_width - 70, 230};
constexpr double to_depths = 44, depths_height = 62, below = 30;
constexpr Length margin = millimetres(20);
constexpr double touched_mm = 0.01;
constexpr Colour after_colour{0, 50, 110};
const Pen before_pen{.colour = {120, 120, 120}, .width = 1, .dashes = {4, 2}};
const Pen after_pen{.colour = after_colour, .width = 1.4};

/// Around what was pushed, before and after.
Eigen::AlignedBox2d pushed_box(const ReliefSection& section)
{
    Eigen::AlignedBox2d box(section.view.flat(section.through));
    for (const SectionLine& line : section.after)
        for (const SectionPoint& p : line.points)
            if (p.figure > touched_mm)
                box.extend(section.view.flat(p.at))
                    .extend(section.view.flat(p.at - p.figure * section.push.vector()));
    return box;
}

AxisWindow window_of(const ReliefSection& section)
{
    const Eigen::AlignedBox2d box = pushed_box(section);
    const Point2 around = Point2::Constant(in_mm(margin)) + 0.1 * box.sizes();
    return {section.view, box.min() - around, box.max() + around, room};
}

void draw_lines(Canvas& canvas, const std::vector<SectionLine>& lines, const AxisWindow& window,
                const Pen& pen)
{
    Path path;
    for (const SectionLine& line : lines) {
        std::vector<Point2> points;
        for (const SectionPoint& p : line.points)
            points.push_back(window.at(p.at));
        path.add(std::move(points), line.closed);
    }
    canvas.clipped(path_of(window.box()), [&] { canvas.stroke(path, pen); });
}

double deepest_of(const ReliefSection& section)
{
    double deepest = 0;
    for (const SectionLine& line : section.after)
        for (const SectionPoint& p : line.points)
            deepest = std::max(deepest, p.figure);
    return deepest;
}

/// The depth over the longer coordinate of the section, which is the one across the push.
class DepthStrip {
public:
    DepthStrip(const ReliefSection& section, const AxisWindow& window)
        : section_(section),
          window_(window), box_{window.box().x, window.box().bottom() + to_depths,
                                window.box().width, depths_height},
          deepest_(deepest_of(section))
    {
        const Eigen::AlignedBox2d pushed = pushed_box(section);
        over_across_ = pushed.sizes().x() >= pushed.sizes().y();
    }

    void draw(Canvas& canvas) const
    {
        Path path;
        for (const SectionLine& line : section_.after) {
            std::vector<Point2> points;
            for (const SectionPoint& p : line.points)
                points.push_back({x_of(p.at), y_of(p.figure)});
            path.add(std::move(points), line.closed);
        }
        canvas.clipped(path_of(box_), [&] { canvas.stroke(path, after_pen); });
        const Pen pen{.colour = {90, 90, 90}, .width = 0.6};
        canvas.stroke(path_of(box_), pen);
        const double line = extent_of({.words = "0", .size = chart_text_size}).height;
        for (const double mm : area_ticks_mm2(0, deepest_, 4)) {
            canvas.stroke(segment({box_.x - 4, y_of(mm)}, {box_.x, y_of(mm)}), pen);
            canvas.text(
                {box_.x - 6, y_of(mm) - line / 2},
                {.words = typeset_figure(mm), .size = chart_text_size, .align = Align::right});
        }
        canvas.text({box_.x, box_.bottom() + 3},
                    {.words = "depth (mm) along " + std::string(axis_names[axis()]) +
                              (over_across_ ? ", below the section" : ", from its lower end"),
                     .size = chart_text_size});
    }

private:
    int axis() const { return over_across_ ? section_.view.across : section_.view.up; }

    double x_of(const Point& p) const
    {
        if (over_across_)
            return window_.at(p).x();
        const double share = (window_.box().bottom() - window_.at(p).y()) / window_.box().height;
        return box_.x + share * box_.width;
    }
    double y_of(double mm) const { return box_.y + 4 + mm / deepest_ * (box_.height - 10); }

    const ReliefSection& section_;
    const AxisWindow& window_;
    Rect box_;
    double deepest_;
    bool over_across_ = true;
};

void draw_section(Canvas& canvas, const ReliefSection& section, const AxisWindow& window)
{
    draw_lines(canvas, section.before, window, before_pen);
    draw_lines(canvas, section.after, window, after_pen);
    draw_axes(canvas, window);
    DepthStrip(section, window).draw(canvas);
}

} // namespace

std::vector<ReliefSection> relief_sections(const ReshapedSurface& surface,
                                           const TriangleMesh& drawn, const Vehicle& vehicle)
{
    std::vector<double> depths;
    for (const Length depth : surface.depths)
        depths.push_back(in_mm(depth));
    const auto deepest =
        static_cast<std::size_t>(std::max_element(depths.begin(), depths.end()) - depths.begin());
    const Point through = surface.mesh.points[deepest] - depths[deepest] * surface.push.vector();
    const AxisView front = AxisView::against(surface.push, vehicle);
    std::vector<ReliefSection> sections;
    for (const int axis : {front.across, front.up}) {
        const Direction normal = Direction::along(Vector::Unit(axis));
        sections.push_back({AxisView::beside(front, axis, vehicle), surface.push, through,
                            surface_section(drawn, {}, through, normal),
                            surface_section(surface.mesh, depths, through, normal)});
    }
    return sections;
}

Figure section_figure(const ReliefSection& section, const std::string& name)
{
    const auto kept = std::make_shared<ReliefSection>(section);
    const auto window = std::make_shared<AxisWindow>(window_of(*kept));
    const std::string plane = std::string(axis_names[section.view.along]) + " = " +
                              rounded(section.through[section.view.along], 1) + " mm";
    Figure figure;
    figure.drawing = {chart_width, window->box().bottom() + to_depths + depths_height + below,
                      [=](Canvas& canvas) { draw_section(canvas, *kept, *window); }};
    figure.title = "Section of " + name + " at " + plane;
    figure.caption =
        "Section of " + name + " at " + plane +
        ", through its deepest point: dashed as drawn, whole as relieved, at one scale; "
        "below, the depth along it, enlarged.";
    figure.alt = figure.caption;
    return figure;
}

} // namespace glim
