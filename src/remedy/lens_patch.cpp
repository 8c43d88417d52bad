#include "remedy/lens_patch.h"

#include "geometry/chord_error.h"
#include "geometry/trim.h"
#include "geometry/weld.h"
#include "units/trig.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr std::uint32_t none = ~std::uint32_t{0};

/// A round lens is cut as a polygon: its area is 0.3 % short of the circle's.
constexpr int round_corners = 48;

/// A facet that looks farther aside than this from the lens belongs to another side of the body.
constexpr double least_facing = 0.2;

/// Of a round outline of unit diameter.
double round_area() { return round_corners / 8.0 * sin(degrees(360.0 / round_corners)); }

double height_share(const LensShape& shape) { return 1 / shape.width_to_height.value_or(1); }

/// The outline of a lens about its seat, corner by corner.
std::vector<Point> outline_of(const LensSeat& seat, const LensShape& shape, Length width)
{
    const double w = in_mm(width) / 2, h = w * height_share(shape);
    std::vector<Point> corners;
    if (shape.width_to_height)
        for (const auto& [a, b] : {std::pair(-w, -h), {w, -h}, {w, h}, {-w, h}})
            corners.emplace_back(seat.centre + a * seat.across + b * seat.up);
    else
        for (int i = 0; i < round_corners; ++i) {
            const Angle a = degrees(360.0 * i / round_corners);
            corners.emplace_back(seat.centre + w * (cos(a) * seat.across + sin(a) * seat.up));
        }
    return corners;
}

/// Whether a facet's box in the outline's plane comes near the outline's box.
bool near_outline(const TriangleMesh& mesh, std::uint32_t facet, const LensSeat& seat, double w,
                  double h)
{
    Box box;
    for (int i = 0; i < 3; ++i) {
        const Vector p = mesh.corner(facet, i) - seat.centre;
        box.add(Point(p.dot(seat.across), p.dot(seat.up), 0));
    }
    return box.least.x() < w && box.most.x() > -w && box.least.y() < h && box.most.y() > -h;
}

double projected_mm2(const TriangleMesh& mesh, const Direction& facing)
{
    double sum = 0;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        sum += facing.dot(area_vector(mesh, f));
    return sum;
}

} // namespace

Area LensShape::area(Length width) const
{
    const double square = in_mm2(width * width);
    return square_millimetres(width_to_height ? square * height_share(*this)
                                              : square * round_area());
}

Length LensShape::width_for(Area area) const
{
    return millimetres(std::sqrt(area / this->area(millimetres(1))));
}

Length LensShape::across(Length width) const
{
    return width_to_height ? width * std::hypot(1, height_share(*this)) : width;
}

LensCarrier::LensCarrier(const TriangleMesh& mesh) : mesh_(welded(mesh))
{
    const std::size_t count = mesh_.facets.size();
    for (std::size_t f = 0; f < count; ++f) {
        const Vector n = area_vector(mesh_, f);
        normals_.emplace_back(n.norm() > 0 ? Vector(n.normalized()) : Vector(Vector::Zero()));
    }
    neighbours_.assign(count, {none, none, none});
    const double least_cosine = cos(crease);
    const std::vector<EdgeUse> uses = edge_uses(mesh_);
    const auto join = [&](std::uint32_t a, std::uint32_t b) {
        auto& of = neighbours_[a];
        *std::find(of.begin(), of.end() - 1, none) = b;
    };
    for (std::size_t i = 0; i + 1 < uses.size(); ++i) {
        const bool pair = uses[i].same_edge(uses[i + 1]);
        const bool third = (i > 0 && uses[i].same_edge(uses[i - 1])) ||
                           (i + 2 < uses.size() && uses[i].same_edge(uses[i + 2]));
        const std::uint32_t a = uses[i].facet, b = uses[i + 1].facet;
        if (pair && !third && normals_[a].dot(normals_[b]) >= least_cosine) {
            join(a, b);
            join(b, a);
        }
    }
}

template <class Take>
std::vector<std::uint32_t> LensCarrier::hanging_together(std::uint32_t from, const Take& take) const
{
    std::vector<std::uint32_t> found{from};
    std::vector<std::uint32_t> sorted{from};
    for (std::size_t i = 0; i < found.size(); ++i)
        for (const std::uint32_t next : neighbours_[found[i]]) {
            if (next == none || !take(next))
                continue;
            const auto at = std::lower_bound(sorted.begin(), sorted.end(), next);
            if (at != sorted.end() && *at == next)
                continue;
            sorted.insert(at, next);
            found.push_back(next);
        }
    return sorted;
}

LensSeat LensCarrier::seat(std::uint32_t facet, Length radius, const Direction& vehicle_up,
                           const Direction& level) const
{
    LensSeat seat;
    seat.facet = facet;
    seat.centre = (mesh_.corner(facet, 0) + mesh_.corner(facet, 1) + mesh_.corner(facet, 2)) / 3;
    const auto near = hanging_together(facet, [&](std::uint32_t f) {
        const Point c = (mesh_.corner(f, 0) + mesh_.corner(f, 1) + mesh_.corner(f, 2)) / 3;
        return (c - seat.centre).norm() <= in_mm(radius) &&
               normals_[f].dot(normals_[facet]) > least_facing;
    });
    Vector sum = Vector::Zero();
    for (const std::uint32_t f : near)
        sum += area_vector(mesh_, f);
    seat.facing = Direction::along(sum);
    const Vector across = vehicle_up.vector().cross(seat.facing.vector());
    // Within some degrees of the vertical the level way across is noise.
    constexpr double least_level = 0.05;
    const Vector& n = seat.facing.vector();
    seat.across = across.norm() > least_level
                      ? Vector(across.normalized())
                      : Vector((level.vector() - level.dot(n) * n).normalized());
    seat.up = n.cross(seat.across);
    return seat;
}

LensPatch LensCarrier::cut(const LensSeat& seat, const LensShape& shape, Length width) const
{
    const double w = in_mm(width) / 2, h = w * height_share(shape);
    const auto facets = hanging_together(seat.facet, [&](std::uint32_t f) {
        return seat.facing.dot(normals_[f]) > least_facing && near_outline(mesh_, f, seat, w, h);
    });
    LensPatch patch;
    patch.width = width;
    patch.mesh = part_within(part_of(mesh_, facets), outline_of(seat, shape, width), seat.facing);
    patch.filled = projected_mm2(patch.mesh, seat.facing) / in_mm2(shape.area(width));
    return patch;
}

} // namespace glim
