#include "shapes/simple_shapes.h"

#include "units/trig.h"

namespace glim::shapes {

namespace {

using Index = std::uint32_t;

void add_quad(TriangleMesh& mesh, const Point& a, const Point& b, const Point& c, const Point& d)
{
    const auto first = static_cast<Index>(mesh.points.size());
    mesh.points.insert(mesh.points.end(), {a, b, c, d});
    mesh.facets.push_back({first, first + 1, first + 2});
    mesh.facets.push_back({first, first + 2, first + 3});
}

Point on_circle(double x, double radius, double share)
{
    const Angle a = degrees(360 * share);
    return {x, radius * cos(a), radius * sin(a)};
}

/// Rings of points around the x axis, joined by quads; outside is away from the axis for rings in
/// the order of falling x.
TriangleMesh bands(const std::vector<std::pair<double, double>>& x_and_radius, int around)
{
    TriangleMesh mesh;
    for (std::size_t i = 0; i + 1 < x_and_radius.size(); ++i) {
        const auto [x0, r0] = x_and_radius[i];
        const auto [x1, r1] = x_and_radius[i + 1];
        for (int k = 0; k < around; ++k) {
            const double s0 = double(k) / around;
            const double s1 = double(k + 1) / around;
            add_quad(mesh, on_circle(x0, r0, s0), on_circle(x1, r1, s0), on_circle(x1, r1, s1),
                     on_circle(x0, r0, s1));
        }
    }
    return mesh;
}

} // namespace

TriangleMesh plate(const Point& centre, double width_y, double height_z, int cells)
{
    TriangleMesh mesh;
    const auto corner = [&](int i, int j) {
        return Point(centre.x(), centre.y() + width_y * (double(i) / cells - 0.5),
                     centre.z() + height_z * (double(j) / cells - 0.5));
    };
    for (int j = 0; j < cells; ++j)
        for (int i = 0; i < cells; ++i)
            add_quad(mesh, corner(i, j), corner(i + 1, j), corner(i + 1, j + 1), corner(i, j + 1));
    return mesh;
}

TriangleMesh wall(double x, double y_least, double y_most, double z_least, double z_most)
{
    return plate({x, (y_least + y_most) / 2, (z_least + z_most) / 2}, y_most - y_least,
                 z_most - z_least);
}

TriangleMesh disc(double radius, int corners)
{
    TriangleMesh mesh;
    mesh.points.push_back(Point::Zero());
    for (int k = 0; k < corners; ++k)
        mesh.points.push_back(on_circle(0, radius, double(k) / corners));
    for (int k = 0; k < corners; ++k)
        mesh.facets.push_back(
            {0, static_cast<Index>(1 + k), static_cast<Index>(1 + (k + 1) % corners)});
    return mesh;
}

TriangleMesh ball(double radius, int around)
{
    std::vector<std::pair<double, double>> rings;
    for (int i = 0; i <= around / 2; ++i) {
        const Angle from_pole = degrees(360.0 * i / around);
        rings.emplace_back(radius * cos(from_pole), radius * sin(from_pole));
    }
    return bands(rings, around);
}

TriangleMesh dome(double radius, int around)
{
    std::vector<std::pair<double, double>> rings;
    for (int i = 0; i <= around / 4; ++i) {
        const Angle from_pole = degrees(360.0 * i / around);
        rings.emplace_back(radius * cos(from_pole), radius * sin(from_pole));
    }
    return bands(rings, around);
}

TriangleMesh dome_base(double radius, int around)
{
    TriangleMesh base = disc(radius, around);
    for (Facet& f : base.facets)
        std::swap(f[1], f[2]);
    return base;
}

TriangleMesh cylinder_wall(double radius, double height, Angle p1, Angle p2, int strips)
{
    TriangleMesh mesh;
    const auto at = [&](int i, double z) {
        const Angle p = p1 + (p2 - p1) * (double(i) / strips);
        return Point(radius * cos(p), radius * sin(p), z);
    };
    for (int i = 0; i < strips; ++i)
        add_quad(mesh, at(i, -height / 2), at(i + 1, -height / 2), at(i + 1, height / 2),
                 at(i, height / 2));
    return mesh;
}

TriangleMesh recess_walls(double width_y, double height_z, double depth)
{
    const double y = width_y / 2;
    const double z = height_z / 2;
    TriangleMesh mesh;
    add_quad(mesh, {0, -y, -z}, {0, -y, z}, {depth, -y, z}, {depth, -y, -z});
    add_quad(mesh, {0, y, -z}, {depth, y, -z}, {depth, y, z}, {0, y, z});
    add_quad(mesh, {0, -y, z}, {0, y, z}, {depth, y, z}, {depth, -y, z});
    add_quad(mesh, {0, -y, -z}, {depth, -y, -z}, {depth, y, -z}, {0, y, -z});
    return mesh;
}

TriangleMesh bore_wall(double radius, double depth, int around)
{
    return bands({{0, radius}, {depth, radius}}, around);
}

TriangleMesh box(const Point& least, const Point& most)
{
    TriangleMesh mesh;
    const auto at = [&](int x, int y, int z) {
        return Point((x != 0 ? most : least).x(), (y != 0 ? most : least).y(),
                     (z != 0 ? most : least).z());
    };
    add_quad(mesh, at(1, 0, 0), at(1, 1, 0), at(1, 1, 1), at(1, 0, 1));
    add_quad(mesh, at(0, 0, 0), at(0, 0, 1), at(0, 1, 1), at(0, 1, 0));
    add_quad(mesh, at(0, 1, 0), at(0, 1, 1), at(1, 1, 1), at(1, 1, 0));
    add_quad(mesh, at(0, 0, 0), at(1, 0, 0), at(1, 0, 1), at(0, 0, 1));
    add_quad(mesh, at(0, 0, 1), at(1, 0, 1), at(1, 1, 1), at(0, 1, 1));
    add_quad(mesh, at(0, 0, 0), at(0, 1, 0), at(1, 1, 0), at(1, 0, 0));
    return mesh;
}

TriangleMesh ribs(double y_least, double pitch, double width, double depth, double height,
                  int count)
{
    TriangleMesh mesh;
    for (int i = 0; i < count; ++i) {
        const double end = y_least + pitch * (i + 1);
        mesh = joined(mesh, box({0, end - width, -height}, {depth, end, height}));
    }
    return mesh;
}

TriangleMesh joined(const TriangleMesh& a, const TriangleMesh& b)
{
    TriangleMesh both = a;
    const auto shift = static_cast<Index>(a.points.size());
    both.points.insert(both.points.end(), b.points.begin(), b.points.end());
    for (const Facet& f : b.facets)
        both.facets.push_back({f[0] + shift, f[1] + shift, f[2] + shift});
    return both;
}

TriangleMesh moved(const TriangleMesh& mesh, const Vector& by)
{
    return placed(mesh, Placement::shift(by));
}

TriangleMesh turned(const TriangleMesh& mesh, Angle by)
{
    return placed(mesh, Placement::turn(Point::Zero(), Direction::z(), by));
}

} // namespace glim::shapes
