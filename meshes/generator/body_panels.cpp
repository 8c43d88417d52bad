#include "generator/body_panels.h"

#include "generator/body_net.h"
#include "generator/loft.h"
#include "generator/panel_edges.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace glim::demo {
namespace {

constexpr double panel_step = 0.14; ///< spans; 8 to 12 mm
constexpr double side_step = 0.1;   ///< the side's spans are longer
constexpr double turn_step = 0.07;  ///< where a shoulder may rise beside the lamp
constexpr double nose_step = 0.1;   ///< finer, because its silhouette is what hides the lamp
/// From here on the wing turns to the side.
constexpr double corner_u = 8.8;

/// The part of the wing that is meshed around the wheel's opening.
constexpr double arch_low_u = 10.4;
constexpr double arch_high_u = 13.82;
constexpr double arch_top_v = 6.2;

constexpr Hem opening_hem{5, 24};
constexpr Hem lamp_hem{lamp_rounding, 20};
constexpr Hem arch_hem{7, 26};
constexpr Hem free_hem{5, 14};

/// Spans between the points of an outline carried over into the skin's chart.
constexpr double outline_step = 0.02;

const Point2 lamp_guess(8, 6.9);

/// A rectangle of the chart that is meshed around a hole.
struct Window {
    Point2 low;
    Point2 high;
    Hole hole;
    int rows;

    bool holds(const Point2& p) const
    {
        return (p.array() > low.array()).all() && (p.array() < high.array()).all();
    }
};

/// The values within [from, to].
std::vector<double> between(const std::vector<double>& values, double from, double to)
{
    std::vector<double> result;
    std::copy_if(values.begin(), values.end(), std::back_inserter(result),
                 [&](double x) { return x >= from && x <= to; });
    return result;
}

/// The rectangle's border along the grid's lines, counter-clockwise from the lower left corner.
std::vector<Point2> window_border(const Window& w, const std::vector<double>& us,
                                  const std::vector<double>& vs)
{
    return grid_rim(between(us, w.low.x(), w.high.x()), between(vs, w.low.y(), w.high.y()));
}

void add_closed_window(ChartMesh& mesh, const Window& w, const std::vector<double>& us,
                       const std::vector<double>& vs)
{
    add_ring(mesh, window_border(w, us, vs), Line::closed, w.hole, w.rows);
}

/// A window whose hole runs out over the chart's own border: over u = 0 or over v = 0.
void add_open_window(ChartMesh& mesh, const Window& w, const std::vector<double>& us,
                     const std::vector<double>& vs)
{
    std::vector<Point2> line = window_border(w, us, vs);
    const bool over_left = w.low.x() == 0;
    const Point2 start = over_left ? w.low : Point2(w.high.x(), w.low.y());
    std::rotate(line.begin(), std::find(line.begin(), line.end(), start), line.end());
    const Point2 end = over_left ? Point2(w.low.x(), w.high.y()) : w.low;
    line.erase(std::find(line.begin(), line.end(), end) + 1, line.end());
    add_ring(mesh, line, Line::open, w.hole, w.rows);
}

Outline carried(const Skin& skin, const Outline& front, Point2 guess)
{
    Outline result;
    for (const Point2& p : front)
        result.push_back(guess = skin.from_front(p.x(), p.y(), guess));
    return refined(result, outline_step);
}

/// Half an outline with its image across u = 0.
Outline median_hole(const Skin& skin, const Outline& front, Point2 guess)
{
    Outline half;
    for (const Point2& p : front)
        half.push_back(guess = skin.from_front(p.x(), p.y(), guess));
    Outline whole = half;
    for (std::size_t k = half.size() - 1; k-- > 1;)
        whole.emplace_back(-half[k].x(), half[k].y());
    whole.emplace_back(-half[0].x(), half[0].y());
    return whole;
}

/// The wheel opening from the front of the sill to its rear, with its image across v = 0.
Outline arch_hole(const Skin& skin)
{
    constexpr int pieces = 90;
    Outline half;
    Point2 guess(cut_at::arch_front_u + 0.5, 0.5);
    // Past the lower edge at both ends: the skin's chart goes on there.
    const double dip = 21 * std::numbers::pi / 180;
    for (int k = 0; k <= pieces; ++k) {
        const double a = -dip + (std::numbers::pi + 2 * dip) * k / pieces;
        guess =
            skin.from_side(-arch_radius * std::cos(a), axle_z + arch_radius * std::sin(a), guess);
        half.push_back(guess);
    }
    half.erase(std::remove_if(half.begin(), half.end(), [](const Point2& p) { return p.y() < 0; }),
               half.end());
    Outline whole(half.rbegin(), half.rend());
    for (const Point2& p : half)
        whole.emplace_back(p.x(), -p.y());
    return whole;
}

/// The sharp ends on the median plane come first and last.
Outline left_half(std::vector<Corner> corners, double low, double high)
{
    corners.push_back({{0, high}, 0});
    corners.push_back({{0, low}, 0});
    Outline half = rounded(corners, 6);
    const auto start = std::find(half.begin(), half.end(), Point2(0, low));
    std::rotate(half.begin(), start, half.end());
    // The last side runs down the median plane: only its upper end belongs to the opening.
    const auto top = std::find(half.begin(), half.end(), Point2(0, high));
    half.erase(top + 1, half.end());
    return half;
}

Window lamp_window(const Skin& skin)
{
    const Outline hole = carried(skin, lamp_outline(), lamp_guess);
    return {{6.3, 5.1}, {9.35, 8.3}, {hole, middle(hole)}, 4};
}

} // namespace

Outline grille_outline()
{
    return left_half({{{268, 514}, 20}, {{312, 590}, 30}, {{286, 666}, 26}}, 512, 668);
}

Outline intake_outline() { return left_half({{{330, 118}, 24}, {{400, 196}, 24}}, 118, 196); }

Outline lamp_outline()
{
    return rounded({{{531, 526}, 30}, {{666, 532}, 34}, {{695, 742}, 30}, {{509, 727}, 26}}, 5);
}

Lift from_skin(const Skin& skin)
{
    return [&skin](const Point2& uv) { return Lifted{skin.at(uv), skin.normal(uv)}; };
}

Lift from_front(const Skin& skin, const Point2& guess)
{
    return [&skin, guess](const Point2& p) {
        const Point2 uv = skin.from_front(p.x(), p.y(), guess);
        return Lifted{skin.at(uv), skin.normal(uv)};
    };
}

Lift from_side(const Skin& skin, const Point2& guess)
{
    return [&skin, guess](const Point2& p) {
        const Point2 uv = skin.from_side(p.x(), p.y(), guess);
        return Lifted{skin.at(uv), skin.normal(uv)};
    };
}

TriangleMesh bonnet_panel(const Skin& skin)
{
    using namespace cut_at;
    const double cowl = skin.end().y();
    ChartMesh chart;
    add_grid(chart, steps({0, catwalk_u}, panel_step), steps({bonnet_v, cowl}, panel_step),
             [](const Point2&) { return false; });
    return panel(
        skin, chart,
        {{Along::u, bonnet_v, {0, catwalk_u}, +1}, {Along::v, catwalk_u, {bonnet_v, cowl}, -1}},
        [&](const Point2& p) -> std::optional<Hem> {
            if (p.x() == 0 || p.y() == cowl)
                return std::nullopt;
            return shut_hem;
        });
}

TriangleMesh nose_panel(const Skin& skin)
{
    using namespace cut_at;
    const Window grille{
        {0, 4.86}, {3.9, 7.5}, {median_hole(skin, grille_outline(), {0, 5}), {0, 6.2}}, 6};
    const auto us = steps({0, grille.high.x(), catwalk_u}, nose_step);
    const auto vs = steps({bumper_v, grille.low.y(), grille.high.y(), bonnet_v}, nose_step);
    ChartMesh chart;
    add_grid(chart, us, vs, [&](const Point2& p) { return grille.holds(p); });
    add_open_window(chart, grille, us, vs);
    return panel(skin, chart,
                 {{Along::u, bumper_v, {0, catwalk_u}, +1},
                  {Along::u, bonnet_v, {0, catwalk_u}, -1},
                  {Along::v, catwalk_u, {bumper_v, bonnet_v}, -1}},
                 [&](const Point2& p) -> std::optional<Hem> {
                     if (p.x() == 0)
                         return std::nullopt;
                     return grille.holds(p) ? opening_hem : shut_hem;
                 });
}

TriangleMesh bumper_panel(const Skin& skin)
{
    using namespace cut_at;
    const Window intake{
        {0, 0.5}, {3.2, 2.1}, {median_hole(skin, intake_outline(), {0, 1}), {0, 1.2}}, 5};
    const auto us = steps({0, intake.high.x(), arch_front_u}, panel_step);
    const auto vs = steps({0, intake.low.y(), intake.high.y(), bumper_v}, panel_step);
    ChartMesh chart;
    add_grid(chart, us, vs, [&](const Point2& p) { return intake.holds(p); });
    add_open_window(chart, intake, us, vs);
    return panel(
        skin, chart,
        {{Along::u, bumper_v, {0, arch_front_u}, -1}, {Along::v, arch_front_u, {0, bumper_v}, -1}},
        [&](const Point2& p) -> std::optional<Hem> {
            if (p.x() == 0)
                return std::nullopt;
            if (intake.holds(p))
                return opening_hem;
            return p.y() == 0 ? free_hem : shut_hem;
        });
}

TriangleMesh wing_panel(const Skin& skin)
{
    using namespace cut_at;
    const Window lamp = lamp_window(skin);
    const Window arch{{arch_low_u, 0}, {arch_high_u, arch_top_v}, {arch_hole(skin), {12.4, 0}}, 9};
    const Point2 end = skin.end();
    auto us = steps({catwalk_u, lamp.low.x(), corner_u}, panel_step);
    const auto turn = steps({corner_u, lamp.high.x(), arch_front_u, arch_low_u}, turn_step);
    const auto rear = steps({arch_low_u, arch_high_u, end.x()}, side_step);
    us.insert(us.end(), turn.begin() + 1, turn.end());
    us.insert(us.end(), rear.begin() + 1, rear.end());
    const auto vs =
        steps({0, bumper_v, lamp.low.y(), arch_top_v, lamp.high.y(), end.y()}, panel_step);
    ChartMesh chart;
    add_grid(chart, us, vs, [&](const Point2& p) {
        const bool bumper = p.x() < arch_front_u && p.y() < bumper_v;
        return bumper || lamp.holds(p) || arch.holds(p);
    });
    add_closed_window(chart, lamp, us, vs);
    add_open_window(chart, arch, us, vs);
    return panel(skin, chart,
                 {{Along::u, bumper_v, {catwalk_u, arch_front_u}, +1},
                  {Along::v, catwalk_u, {bumper_v, end.y()}, +1},
                  {Along::v, arch_front_u, {0, bumper_v}, +1}},
                 [&](const Point2& p) -> std::optional<Hem> {
                     if (p.x() == end.x() || p.y() == end.y())
                         return std::nullopt;
                     if (lamp.holds(p))
                         return lamp_hem;
                     if (arch.holds(p))
                         return arch_hem;
                     return p.y() == 0 ? free_hem : shut_hem;
                 });
}

} // namespace glim::demo
