#include "generator/wheel_and_cab.h"

#include "generator/body_net.h"
#include "generator/loft.h"
#include "generator/outline.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace glim::demo {
namespace {

/// A section turned about the front axle. `profile` is radius and w, from the inside of the vehicle
/// outward; the side that looks away from the axle is the outer one.
TriangleMesh turned(const Outline& profile, Point2 span_deg, int pieces)
{
    Loft loft;
    for (int k = 0; k <= pieces; ++k) {
        const double turn = span_deg.x() + (span_deg.y() - span_deg.x()) * k / pieces;
        const double a = (turn == 360 ? 0 : turn) * std::numbers::pi / 180;
        std::vector<Point> section;
        for (const Point2& p : profile)
            section.emplace_back(-p.x() * std::cos(a), p.y(), axle_z + p.x() * std::sin(a));
        loft.push_back(section);
    }
    return skinned(loft);
}

constexpr int glass_pieces = 26;

TriangleMesh upright_sheet(const Skin& skin, double from_u, double to_u)
{
    constexpr double roof_z = 1500; ///< mm
    constexpr double rake = 430;    ///< mm rearward on the way up
    constexpr double tumblehome = 0.86;
    constexpr double bulge = 26; ///< mm, halfway up
    constexpr int rows = 14;
    Loft loft;
    for (int i = 0; i <= glass_pieces; ++i) {
        const double u = from_u + (to_u - from_u) * i / glass_pieces;
        const Point foot = skin.at({u, skin.end().y()});
        std::vector<Point> rise;
        for (int j = 0; j <= rows; ++j) {
            const double t = static_cast<double>(j) / rows;
            const double narrow = 1 - (1 - tumblehome) * t;
            const double out = bulge * 4 * t * (1 - t);
            rise.emplace_back(foot.x() + rake * t - out, foot.y() * narrow,
                              foot.z() + (roof_z - foot.z()) * t);
        }
        loft.push_back(rise);
    }
    return turned_inside_out(skinned(loft));
}

} // namespace

std::vector<Part> wheel_parts()
{
    const Outline tyre{{205, 690}, {250, 682}, {296, 690}, {315, 708}, {320, 776},
                       {315, 844}, {296, 862}, {250, 870}, {208, 862}};
    const Outline rim{{208, 862}, {200, 858}, {196, 845}, {180, 838},
                      {120, 846}, {60, 850},  {2, 850}};
    const Outline liner{{arch_radius - 3, 640}, {arch_radius - 3, 740}, {arch_radius - 3, 852}};
    return {{"tyre", "rubber", turned(tyre, {0, 360}, 60)},
            {"wheel_rim", "bright_trim", turned(rim, {0, 360}, 60)},
            {"wheel_house", "dark_trim", turned_inside_out(turned(liner, {-14, 194}, 40))}};
}

std::vector<Part> cab_parts(const Skin& skin)
{
    constexpr double pillar_u = 11.6;
    return {{"windscreen", "glass", upright_sheet(skin, 0, pillar_u)},
            {"pillar", "body_paint", upright_sheet(skin, pillar_u, skin.end().x())}};
}

} // namespace glim::demo
