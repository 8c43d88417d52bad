#include "bench/body.h"

#include "geometry/direction.h"
#include "units/trig.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace glim::bench {

namespace {

using Index = std::uint32_t;
/// A surface over the unit square; right-handed where u runs to the right of v seen from outside.
using Sheet = std::function<Point(double u, double v)>;

constexpr double front_mm = 3700;
constexpr double half_width_mm = 900;
constexpr double lowest_mm = 200;
constexpr double highest_mm = 1000;

/// The rectangle, seen from ahead, in which the lamp sits; its lens stands back from the skin.
constexpr double lens_y_least = 610, lens_y_most = 768, lens_z_least = 605, lens_z_most = 695;
constexpr double lens_depth_mm = 14;
constexpr double gap_mm = 5;
constexpr double bezel_depth_mm = 60;

/// `across` by `up` quads, each of two triangles.
TriangleMesh mesh_of(const Sheet& sheet, std::size_t across, std::size_t up,
                     const std::function<bool(const Point&)>& left_out = {})
{
    TriangleMesh mesh;
    for (std::size_t j = 0; j <= up; ++j)
        for (std::size_t i = 0; i <= across; ++i)
            mesh.points.push_back(sheet(double(i) / double(across), double(j) / double(up)));
    for (std::size_t j = 0; j < up; ++j)
        for (std::size_t i = 0; i < across; ++i) {
            const auto a = static_cast<Index>(j * (across + 1) + i);
            const auto d = static_cast<Index>(a + across + 1);
            if (left_out && (left_out(mesh.points[a]) || left_out(mesh.points[a + 1]) ||
                             left_out(mesh.points[d]) || left_out(mesh.points[d + 1])))
                continue;
            mesh.facets.push_back({a, a + 1, d + 1});
            mesh.facets.push_back({a, d + 1, d});
        }
    return mesh;
}

/// The smooth front without details: it falls back towards the corner, as most do.
double smooth_x(double y, double z)
{
    const double out = std::abs(y) / half_width_mm;
    const double off = (z - 550) / 450;
    return front_mm - 350 * std::pow(out, 2.5) - 60 * off * off;
}

Point on_skin(double y, double z)
{
    const double wave = 1.5 * std::sin(y / 37) * std::cos(z / 23);
    return {smooth_x(y, z) + wave, y, z};
}

bool in_aperture(const Point& p)
{
    return p.y() > lens_y_least - gap_mm && p.y() < lens_y_most + gap_mm &&
           p.z() > lens_z_least - gap_mm && p.z() < lens_z_most + gap_mm;
}

/// One of 4 x 4 patches of skin, left out where the lamp sits.
TriangleMesh patch(int column, int row, std::size_t quads)
{
    const double width = 2 * half_width_mm / 4;
    const double height = (highest_mm - lowest_mm) / 4;
    const double aspect = std::sqrt(width / height);
    const double side = std::sqrt(double(quads));
    const auto sheet = [&](double u, double v) {
        return on_skin(-half_width_mm + width * (column + u), lowest_mm + height * (row + v));
    };
    return mesh_of(sheet, static_cast<std::size_t>(std::max(2.0, side * aspect)),
                   static_cast<std::size_t>(std::max(2.0, side / aspect)), in_aperture);
}

/// The rim of the aperture at a share of the way round, counter-clockwise seen from ahead.
Point2 on_rim(double share)
{
    const double width = lens_y_most - lens_y_least + 2 * gap_mm;
    const double height = lens_z_most - lens_z_least + 2 * gap_mm;
    double way = share * 2 * (width + height);
    const Point2 start(lens_y_least - gap_mm, lens_z_least - gap_mm);
    if (way <= width)
        return start + Point2(way, 0);
    way -= width;
    if (way <= height)
        return start + Point2(width, way);
    way -= height;
    if (way <= width)
        return start + Point2(width - way, height);
    return start + Point2(0, height - (way - width));
}

TriangleMesh bezel(std::size_t quads)
{
    const auto sheet = [](double u, double v) {
        const Point2 rim = on_rim(u);
        return Point(smooth_x(rim.x(), rim.y()) + 2 - bezel_depth_mm * v, rim.x(), rim.y());
    };
    const std::size_t deep = static_cast<std::size_t>(std::max(1.0, std::sqrt(double(quads) / 8)));
    return mesh_of(sheet, std::max<std::size_t>(4, quads / deep), deep);
}

/// A round bar along a curve.
TriangleMesh bar(const std::function<Point(double)>& middle, double radius, std::size_t quads)
{
    const std::size_t around = std::clamp<std::size_t>(quads / 12, 4, 48);
    const auto sheet = [&](double u, double v) {
        const Point step = middle(std::min(1.0, u + 1e-3)) - middle(std::max(0.0, u - 1e-3));
        const ViewPlane plane(Direction::along(step));
        const Angle turn = degrees(360 * v);
        return Point(middle(u) + radius * (cos(turn) * plane.across + sin(turn) * plane.up));
    };
    return mesh_of(sheet, std::max<std::size_t>(2, quads / around), around);
}

void append(TriangleMesh& to, const TriangleMesh& from)
{
    const auto shift = static_cast<Index>(to.points.size());
    to.points.insert(to.points.end(), from.points.begin(), from.points.end());
    for (const Facet& f : from.facets)
        to.facets.push_back({f[0] + shift, f[1] + shift, f[2] + shift});
}

TriangleMesh grille(std::size_t quads)
{
    constexpr int bars = 6;
    TriangleMesh all;
    for (int i = 0; i < bars; ++i) {
        const double z = 480 + 50 * i;
        const auto middle = [z](double u) {
            const double y = -540 + 1080 * u;
            return Point(smooth_x(y, z) + 22, y, z);
        };
        append(all, bar(middle, 6, quads / bars));
    }
    return all;
}

/// The edge of the bonnet, above the lamp and before it.
TriangleMesh bonnet_edge(std::size_t quads)
{
    const auto middle = [](double u) {
        const double y = 300 + 580 * u;
        return Point(smooth_x(y, 730) + 25, y, 730);
    };
    return bar(middle, 14, quads);
}

/// An upright guard inboard of the lamp.
TriangleMesh guard(std::size_t quads)
{
    const auto middle = [](double u) {
        const double z = 420 + 330 * u;
        return Point(smooth_x(545, z) + 45, 545, z);
    };
    return bar(middle, 9, quads);
}

TriangleMesh lens()
{
    const auto sheet = [](double u, double v) {
        const double y = lens_y_least + (lens_y_most - lens_y_least) * u;
        const double z = lens_z_least + (lens_z_most - lens_z_least) * v;
        return Point(smooth_x(y, z) - lens_depth_mm, y, z);
    };
    return mesh_of(sheet, 60, 30);
}

} // namespace

Body body_of(std::size_t triangles)
{
    const std::size_t quads = std::max<std::size_t>(4, triangles / part_count / 2);
    Body body;
    for (int row = 0; row < 4; ++row)
        for (int column = 0; column < 4; ++column)
            body.parts.push_back(patch(column, row, quads));
    body.parts.push_back(bezel(quads));
    body.parts.push_back(grille(quads));
    body.parts.push_back(bonnet_edge(quads));
    body.parts.push_back(guard(quads));
    body.lens = lens();
    return body;
}

TriangleMesh reshaped(const TriangleMesh& part, double by)
{
    TriangleMesh changed = part;
    for (Point& p : changed.points)
        p.x() += by * std::sin(p.y() / 20) * std::cos(p.z() / 20);
    return changed;
}

} // namespace glim::bench
