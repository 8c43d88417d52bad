#include "generator/front_parts.h"

#include "generator/body_panels.h"
#include "generator/loft.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace glim::demo {
namespace {

constexpr double bar_depth = 24;   ///< mm fore and aft
constexpr double bar_height = 9;   ///< mm
constexpr double bar_recess = 17;  ///< mm from the skin to the bar's middle
constexpr double bar_step = 18;    ///< mm along the bar
constexpr double bar_overlap = 12; ///< mm that a bar runs on behind the opening's edge

/// Around a bar: an ellipse that is blunter in front.
std::vector<Point> bar_section(const Lifted& place)
{
    constexpr int corners = 10;
    const Vector inward = Vector(-place.outward.x(), -place.outward.y(), 0).normalized();
    std::vector<Point> section;
    for (int k = 0; k <= corners; ++k) {
        const double a = 2 * std::numbers::pi * (k % corners) / corners;
        const double along = bar_depth / 2 * std::cos(a);
        const double taper = 1 - 0.3 * std::cos(a);
        section.push_back(place.at + along * inward +
                          Vector(0, 0, bar_height / 2 * taper * std::sin(a)));
    }
    return section;
}

TriangleMesh bar(const Skin& skin, double z, double half_width)
{
    const int pieces = static_cast<int>(std::ceil(half_width / bar_step));
    Loft loft;
    Point2 guess(0, 6);
    for (int k = 0; k <= pieces; ++k) {
        guess = skin.from_front(half_width * k / pieces, z, guess);
        loft.push_back(bar_section(sunk(from_skin(skin), bar_recess)(guess)));
    }
    return skinned(loft);
}

/// A sheet behind an opening across the median plane.
TriangleMesh screen(const Skin& skin, const Outline& half, double depth, const Point2& guess)
{
    constexpr double step = 24;
    constexpr double overlap = 4; ///< mm that it is larger than the opening, less at the median
    Outline larger;
    const Point2 centre(0, middle(half).y());
    for (const Point2& p : half)
        larger.push_back(p + overlap * (p - centre) / (p - centre).norm());
    return lifted(filled(larger, step), sunk(from_front(skin, guess), depth));
}

/// A sheet across the vehicle at `x`, seen from inside as all charts are.
Lift flat(double x)
{
    return [x](const Point2& p) { return Lifted{{x, p.x(), p.y()}, {-1, 0, 0}}; };
}

TriangleMesh slab(const Outline& outline, double x, const Hem& hem)
{
    constexpr double step = 20;
    const ChartMesh chart = filled(outline, step);
    TriangleMesh mesh = lifted(chart, flat(x));
    append(mesh, hemmed(chart, flat(x), [&](const Point2&) { return hem; }));
    return mesh;
}

} // namespace

std::vector<Part> grille_parts(const Skin& skin)
{
    TriangleMesh bars;
    const Outline opening = grille_outline();
    for (double z : {536.0, 563.0, 590.0, 617.0, 644.0}) {
        const double edge = exit_point(opening, {0, z}, {1, z}).x();
        append(bars, bar(skin, z, edge + bar_overlap));
    }
    return {{"grille_bars", "bright_trim", bars},
            {"grille_screen", "dark_trim", screen(skin, opening, 46, {1, 6})}};
}

Part intake_screen(const Skin& skin)
{
    return {"intake_screen", "dark_trim", screen(skin, intake_outline(), 26, {1, 1})};
}

std::vector<Part> plate_parts()
{
    constexpr double face_x = -848;
    constexpr double holder_x = -845;
    const Outline plate =
        rounded({{{-260, 262}, 8}, {{260, 262}, 8}, {{260, 374}, 8}, {{-260, 374}, 8}}, 10);
    return {{"number_plate", "plate", slab(plate, face_x, {0.5, 1.2})},
            {"plate_holder", "dark_trim", slab(drawn_in(plate, -6), holder_x, {3, 26})}};
}

Part load_tray()
{
    constexpr double face_x = -905;
    constexpr double upper_edge = 688; // hides more than half of the indicator on its axis
    const Outline sheet = rounded(
        {{{-760, 420}, 12}, {{760, 420}, 12}, {{760, upper_edge}, 30}, {{-760, upper_edge}, 30}},
        10);
    return {"load_tray", "bright_trim", slab(sheet, face_x, {2, 24})};
}

Part tow_eye_cover(const Skin& skin)
{
    constexpr double rise = 1.4; ///< mm above the bumper
    const Lift lift = sunk(from_front(skin, {3.5, 2.6}), -rise);
    const ChartMesh chart = filled(circle({392, 292}, 32, 40), 6);
    TriangleMesh mesh = lifted(chart, lift);
    append(mesh, hemmed(chart, lift, [](const Point2&) { return Hem{1.4, 2}; }));
    return {"tow_eye_cover", "body_paint", mesh};
}

} // namespace glim::demo
