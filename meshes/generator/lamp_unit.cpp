#include "generator/lamp_unit.h"

#include "generator/body_panels.h"
#include "generator/loft.h"

#include <cmath>
#include <numbers>

namespace glim::demo {
namespace {

// Depths below the skin, mm. The lenses lie 5 mm behind the bezel's face and 10 behind the cover.
constexpr double cover_depth = 2.5;
constexpr double cover_thickness = 3;
constexpr double bezel_depth = 12;
constexpr double lens_depth = 17;
constexpr double housing_depth = 27; ///< behind the panel's rolled edge

constexpr double cover_gap = 3; ///< mm between cover and opening
constexpr double bezel_gap = 3;
constexpr double housing_gap = -8; ///< wider than the opening: nothing is seen past it
constexpr double lens_gap = 0.5;   ///< mm between a lens and the bezel's lip
constexpr Hem lip{2, 5};

constexpr double fine = 3; ///< mm between points of a lens
constexpr double coarse = 8;
constexpr double field_step = 4; ///< mm between points around the bezel's fields

const Point2 guess(8, 6.9);
const Point2 beam_centre(603, 582);
constexpr double beam_radius = 35;

Outline indicator_outline()
{
    return rounded({{{532, 656}, 9}, {{664, 660}, 11}, {{669, 716}, 13}, {{528, 706}, 9}}, fine);
}

Outline position_outline()
{
    return rounded({{{536, 634}, 4}, {{662, 638}, 4}, {{662.5, 648}, 4}, {{535, 644}, 4}}, fine);
}

Outline beam_outline() { return circle(beam_centre, beam_radius, 48); }

Outline opening(double gap) { return drawn_in(lamp_outline(), lamp_rounding + gap); }

TriangleMesh cover(const Skin& skin)
{
    const ChartMesh chart = filled(opening(cover_gap), coarse);
    const Lift outer = sunk(from_front(skin, guess), cover_depth);
    TriangleMesh mesh = lifted(chart, outer);
    append(mesh, turned_inside_out(lifted(chart, sunk(outer, cover_thickness))));
    append(mesh, hemmed(chart, outer, [](const Point2&) { return Hem{0, cover_thickness}; }));
    return mesh;
}

/// One field of the bezel around its aperture, which leaves room for the lip's rounding.
void add_field(ChartMesh& chart, const Outline& field, const Outline& lens)
{
    add_ring(chart, refined(field, field_step), Line::closed,
             {drawn_in(lens, -lip.radius - lens_gap), middle(lens)}, 3);
}

TriangleMesh bezel(const Skin& skin)
{
    // Right ends left of their starts: what lies to the left of each line is above it.
    const Point2 upper_left(400, 645.5);
    const Point2 upper_right(800, 659);
    const Point2 lower_left(400, 621);
    const Point2 lower_right(800, 633);
    const Outline whole = opening(bezel_gap);
    ChartMesh chart;
    add_field(chart, cut(whole, upper_left, upper_right), indicator_outline());
    add_field(chart, cut(cut(whole, upper_right, upper_left), lower_left, lower_right),
              position_outline());
    add_field(chart, cut(whole, lower_right, lower_left), beam_outline());

    const Lift lift = sunk(from_front(skin, guess), bezel_depth);
    const Outline inside = drawn_in(whole, 2);
    TriangleMesh mesh = lifted(chart, lift);
    append(mesh, hemmed(chart, lift, [&](const Point2& p) {
               return holds(inside, p) ? lip : Hem{0, 7};
           }));
    return mesh;
}

std::vector<Point> beam_ring(const Point& centre, double radius)
{
    std::vector<Point> ring;
    for (const Point2& p : circle({0, 0}, radius, 48))
        ring.push_back(centre + Vector(0, p.x(), p.y()));
    ring.push_back(ring.front());
    return ring;
}

constexpr double beam_lens_radius = 28;
constexpr double beam_lens_recess = 34;

/// The plane of the dipped beam's lens, behind the aperture.
Point beam_lens_centre(const Skin& skin)
{
    const Lifted l = from_front(skin, guess)(beam_centre);
    return l.at - lens_depth * l.outward + Vector(beam_lens_recess, 0, 0);
}

TriangleMesh beam_bowl(const Skin& skin)
{
    const Lift lift = sunk(from_front(skin, guess), bezel_depth + lip.radius + lip.depth);
    std::vector<Point> front;
    for (const Point2& p : drawn_in(beam_outline(), -lens_gap))
        front.push_back(lift(p).at);
    front.push_back(front.front());
    const std::vector<Point> back = beam_ring(beam_lens_centre(skin), beam_lens_radius);
    Loft loft;
    constexpr int sections = 5;
    for (int k = 0; k <= sections; ++k) {
        std::vector<Point> ring;
        for (std::size_t i = 0; i < front.size(); ++i)
            ring.push_back(front[i] + (back[i] - front[i]) * k / sections);
        loft.push_back(ring);
    }
    return facing(skinned(loft), {-1, 0, 0});
}

TriangleMesh beam_lens(const Skin& skin)
{
    constexpr double bulge = 13;
    const Point centre = beam_lens_centre(skin);
    const ChartMesh chart = filled(circle({0, 0}, beam_lens_radius, 48), coarse);
    return lifted(chart, [&](const Point2& p) {
        const double rise = bulge * (1 - p.squaredNorm() / (beam_lens_radius * beam_lens_radius));
        return Lifted{centre + Vector(-rise, p.x(), p.y()), {-1, 0, 0}};
    });
}

/// A dish that narrows towards its back.
TriangleMesh housing(const Skin& skin)
{
    constexpr double depth = 62;
    constexpr double narrowing = 0.22;
    constexpr int sections = 6;
    const Lift rim = sunk(from_front(skin, guess), housing_depth);
    const Outline outline = opening(housing_gap);
    const Point2 centre = middle(outline);
    const auto at = [&](const Point2& p, double t) -> Point {
        const Point2 drawn = centre + (1 - narrowing * t * t) * (p - centre);
        return rim(drawn).at + Vector(depth * t, 0, 0);
    };
    const ChartMesh back = filled(outline, 2 * coarse);
    TriangleMesh mesh = lifted(back, [&](const Point2& p) { return Lifted{at(p, 1), {-1, 0, 0}}; });
    for (const ChartMesh::Chain& chain : back.border([](const Point2&) { return false; })) {
        Loft loft;
        for (std::size_t k = 0; k <= chain.points.size(); ++k) {
            const Point2 p = back.points()[chain.points[k % chain.points.size()]];
            std::vector<Point> section;
            for (int i = sections; i >= 0; --i)
                section.push_back(at(p, static_cast<double>(i) / sections));
            loft.push_back(section);
        }
        append(mesh, skinned(loft));
    }
    return turned_inside_out(mesh);
}

} // namespace

std::vector<Part> lamp_unit(const Skin& skin)
{
    const Lift lens = sunk(from_front(skin, guess), lens_depth);
    return {{"lamp_cover", "clear_cover", cover(skin)},
            {"lamp_bezel", "dark_trim", bezel(skin)},
            {"indicator_lens", "indicator_lens", lifted(filled(indicator_outline(), fine), lens)},
            {"position_lens", "position_lens", lifted(filled(position_outline(), fine), lens)},
            {"dipped_beam_bowl", "bright_trim", beam_bowl(skin)},
            {"dipped_beam_lens", "dipped_lens", beam_lens(skin)},
            {"lamp_housing", "dark_trim", housing(skin)}};
}

std::vector<Part> standing_lamp(const StandingLamp& lamp, const Lift& lift)
{
    constexpr double lens_height = 5; ///< mm above the skin
    constexpr double frame_height = 6.5;
    constexpr double frame_width = 5;
    constexpr Hem outer{4, 6};
    constexpr Hem inner{0.8, 2.5};
    const Outline hole = drawn_in(lamp.lens, -inner.radius - lens_gap);
    ChartMesh frame;
    add_ring(frame, drawn_in(hole, -frame_width), Line::closed, {hole, middle(hole)}, 2);
    const Lift top = sunk(lift, -frame_height);
    const Outline ridge = drawn_in(hole, -frame_width / 2);
    TriangleMesh body = lifted(frame, top);
    append(body,
           hemmed(frame, top, [&](const Point2& p) { return holds(ridge, p) ? inner : outer; }));
    return {{lamp.name + "_lens", "indicator_lens",
             lifted(filled(lamp.lens, fine), sunk(lift, -lens_height))},
            {lamp.name + "_frame", "dark_trim", body}};
}

} // namespace glim::demo
