#include "drawing/depth_map.h"

#include "drawing/axis_view.h"
#include "drawing/chained_lines.h"
#include "drawing/chart_ticks.h"
#include "drawing/colour_bar.h"
#include "drawing/colour_ramp.h"
#include "drawing/legend.h"
#include "drawing/map_chart.h"
#include "drawing/surface_section.h"
#include "words/chart_words.h"
#include "words/numbers.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <memory>

namespace glim {

namespace {

constexpr Rect room{54, 14, chart_width - colour_bar_width - 70, 240};
constexpr double below = 30; ///< for the words of the axis
constexpr double pixels_a_point = 3;
constexpr int most_levels = 8;
constexpr Length margin = millimetres(30); ///< of untouched surface around the relief
constexpr double touched_mm = 0.01;        ///< less is no depth that anybody draws

struct Depths {
    TriangleMesh mesh;
    std::vector<double> mm; ///< one a point
    double deepest_mm = 0;
};

AxisWindow window_of(const Depths& depths, const AxisView& view)
{
    Eigen::AlignedBox2d flat;
    for (std::size_t p = 0; p < depths.mm.size(); ++p)
        if (depths.mm[p] > touched_mm)
            flat.extend(view.flat(depths.mesh.points[p]));
    const Point2 around = Point2::Constant(in_mm(margin));
    return {view, flat.min() - around, flat.max() + around, room};
}

/// The nearest facet at each pixel, painted by its depth there.
class DepthPainter {
public:
    DepthPainter(const Depths& depths, const AxisWindow& window)
        : depths_(depths), window_(window),
          raster_(int(std::lround(window.box().width * pixels_a_point)),
                  int(std::lround(window.box().height * pixels_a_point))),
          nearest_(raster_.pixels.size(), -std::numeric_limits<double>::infinity())
    {
    }

    Raster paint(double toward)
    {
        for (const Facet& facet : depths_.mesh.facets)
            paint(facet, toward);
        return std::move(raster_);
    }

private:
    Point2 pixel(std::uint32_t p) const
    {
        const Point2 at = window_.at(depths_.mesh.points[p]);
        return (at - Point2(window_.box().x, window_.box().y)) * pixels_a_point;
    }

    void paint(const Facet& f, double toward)
    {
        const std::array<Point2, 3> corners{pixel(f[0]), pixel(f[1]), pixel(f[2])};
        Eigen::AlignedBox2d box;
        for (const Point2& c : corners)
            box.extend(c);
        const int top = std::max(0, int(std::floor(box.min().y())));
        const int bottom = std::min(raster_.height - 1, int(std::ceil(box.max().y())));
        const int left = std::max(0, int(std::floor(box.min().x())));
        const int right = std::min(raster_.width - 1, int(std::ceil(box.max().x())));
        for (int y = top; y <= bottom; ++y)
            for (int x = left; x <= right; ++x)
                paint_pixel(f, corners, {x + 0.5, y + 0.5}, toward);
    }

    void paint_pixel(const Facet& f, const std::array<Point2, 3>& c, const Point2& at,
                     double toward)
    {
        Eigen::Matrix2d edges;
        edges << c[1] - c[0], c[2] - c[0];
        const double area = edges.determinant();
        if (area == 0)
            return;
        const Point2 share = edges.inverse() * (at - c[0]);
        const double first = 1 - share.x() - share.y();
        if (share.x() < 0 || share.y() < 0 || first < 0)
            return;
        const int along = window_.view().along;
        const auto mean = [&](const auto& figure) {
            return first * figure(f[0]) + share.x() * figure(f[1]) + share.y() * figure(f[2]);
        };
        const double height =
            toward * mean([&](std::uint32_t p) { return depths_.mesh.points[p][along]; });
        const std::size_t place =
            std::size_t(at.y()) * std::size_t(raster_.width) + std::size_t(at.x());
        if (height <= nearest_[place])
            return;
        nearest_[place] = height;
        const double depth = mean([&](std::uint32_t p) { return depths_.mm[p]; });
        raster_.pixels[place] = ramp_colour(depth / depths_.deepest_mm);
    }

    const Depths& depths_;
    const AxisWindow& window_;
    Raster raster_;
    std::vector<double> nearest_;
};

/// Lines of equal depth are where a plane cuts the depths, laid over the flat surface as heights.
std::vector<SectionLine> level_lines(const Depths& depths, const AxisView& view, double level)
{
    TriangleMesh hill = depths.mesh;
    for (std::size_t p = 0; p < hill.points.size(); ++p) {
        const Point2 flat = view.flat(depths.mesh.points[p]);
        hill.points[p] = {flat.x(), flat.y(), depths.mm[p]};
    }
    return surface_section(hill, {}, {0, 0, level}, Direction::z());
}

double length_of(const SectionLine& line)
{
    double length = 0;
    for (std::size_t i = 1; i < line.points.size(); ++i)
        length += (line.points[i].at - line.points[i - 1].at).norm();
    return length;
}

void draw_level(Canvas& canvas, const Depths& depths, const AxisWindow& window, double level)
{
    const std::vector<SectionLine> lines = level_lines(depths, window.view(), level);
    Path path;
    for (const SectionLine& line : lines) {
        std::vector<Point2> points;
        for (const SectionPoint& p : line.points)
            points.push_back(window.at(Point2(p.at.x(), p.at.y())));
        path.add(std::move(points), line.closed);
    }
    canvas.stroke(path, {.colour = {40, 40, 40}, .width = 0.5});
    const auto longest =
        std::max_element(lines.begin(), lines.end(),
                         [](const auto& a, const auto& b) { return length_of(a) < length_of(b); });
    if (longest == lines.end() || longest->points.empty())
        return;
    const SectionPoint& middle = longest->points[longest->points.size() / 3];
    const Text label{.words = typeset_figure(level),
                     .size = chart_text_size - 1,
                     .align = Align::centre,
                     .halo = white};
    canvas.text(window.at(Point2(middle.at.x(), middle.at.y())) -
                    Point2(0, extent_of(label).height / 2),
                label);
}

void draw_map(Canvas& canvas, const Depths& depths, const AxisWindow& window, const Raster& raster)
{
    canvas.image(raster, window.box());
    canvas.clipped(path_of(window.box()), [&] {
        for (const double level : area_ticks_mm2(0, depths.deepest_mm, most_levels))
            if (level > 0)
                draw_level(canvas, depths, window, level);
    });
    draw_axes(canvas, window);
    const double deepest = depths.deepest_mm;
    draw_colour_bar(canvas,
                    {.title = "depth (mm)",
                     .scale = {.least = 0, .most = deepest},
                     .colour = [deepest](double mm) { return ramp_colour(mm / deepest); }},
                    {chart_width - colour_bar_width + 8, 40, colour_bar_width, 160});
}

std::string words_of(const AxisView& view)
{
    return "seen along " + std::string(axis_names[view.along]);
}

} // namespace

Figure depth_map(const ReshapedSurface& surface, const std::string& name, const Vehicle& vehicle)
{
    const auto depths = std::make_shared<Depths>();
    depths->mesh = surface.mesh;
    for (const Length depth : surface.depths)
        depths->mm.push_back(in_mm(depth));
    depths->deepest_mm = *std::max_element(depths->mm.begin(), depths->mm.end());
    const AxisView view = AxisView::against(surface.push, vehicle);
    const auto window = std::make_shared<AxisWindow>(window_of(*depths, view));
    const double toward = surface.push.vector()[view.along] > 0 ? -1 : 1;
    const auto raster = std::make_shared<Raster>(DepthPainter(*depths, *window).paint(toward));

    Figure figure;
    figure.drawing = {chart_width, window->box().bottom() + below,
                      [=](Canvas& canvas) { draw_map(canvas, *depths, *window, *raster); }};
    figure.title = "Depth of the relief of " + name;
    figure.caption = "How far " + name + " is pushed in, along its push, " + words_of(view) +
                     "; lines of equal depth in mm, coordinates of the vehicle. Deepest " +
                     rounded(depths->deepest_mm, 2) + " mm.";
    figure.alt = figure.caption;
    return figure;
}

} // namespace glim
