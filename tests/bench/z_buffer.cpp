#include "bench/z_buffer.h"

#include <algorithm>
#include <cmath>

namespace glim::bench {

namespace {

/// Depths closer than this are one: the lens must not cover itself by rounding.
constexpr double same_depth_mm = 0.05;

/// A rectangle of pixels over the lamp; depth grows towards the eye.
struct Picture {
    Point2 least;
    double pixel;
    int across, up;
    std::vector<double> lit;   ///< depth of the lit surface; -infinity where there is none
    std::vector<double> front; ///< depth of what is foremost
};

std::vector<Point> in_view(const TriangleMesh& mesh, const ViewPlane& plane)
{
    std::vector<Point> points;
    points.reserve(mesh.points.size());
    for (const Point& p : mesh.points)
        points.emplace_back(plane.across.dot(p), plane.up.dot(p), plane.toward.dot(p));
    return points;
}

Picture picture_over(const std::vector<Point>& points, double pixel)
{
    Box box;
    for (const Point& p : points)
        box.add(p);
    Picture picture{box.least.head<2>(), pixel, 0, 0, {}, {}};
    picture.across = static_cast<int>(std::ceil(box.size().x() / pixel));
    picture.up = static_cast<int>(std::ceil(box.size().y() / pixel));
    const auto pixels =
        static_cast<std::size_t>(picture.across) * static_cast<std::size_t>(picture.up);
    picture.lit.assign(pixels, -std::numeric_limits<double>::infinity());
    picture.front = picture.lit;
    return picture;
}

/// Which pixels' middles lie between two places.
struct Span {
    int first, last;
};
Span span_of(double least, double most, double origin, double pixel, int count)
{
    const double first = std::ceil((least - origin) / pixel - 0.5);
    const double last = std::floor((most - origin) / pixel - 0.5);
    return {static_cast<int>(std::clamp(first, 0.0, double(count))),
            static_cast<int>(std::clamp(last, -1.0, double(count - 1)))};
}

void draw(const Picture& picture, const std::array<Point, 3>& t, std::vector<double>& depth)
{
    const auto [x0, x1] =
        span_of(std::min({t[0].x(), t[1].x(), t[2].x()}), std::max({t[0].x(), t[1].x(), t[2].x()}),
                picture.least.x(), picture.pixel, picture.across);
    const auto [y0, y1] =
        span_of(std::min({t[0].y(), t[1].y(), t[2].y()}), std::max({t[0].y(), t[1].y(), t[2].y()}),
                picture.least.y(), picture.pixel, picture.up);
    const Point2 b = (t[1] - t[0]).head<2>();
    const Point2 c = (t[2] - t[0]).head<2>();
    const double twice = b.x() * c.y() - b.y() * c.x();
    if (x0 > x1 || y0 > y1 || twice == 0)
        return;
    for (int y = y0; y <= y1; ++y)
        for (int x = x0; x <= x1; ++x) {
            const Point2 p =
                picture.least + picture.pixel * Point2(x + 0.5, y + 0.5) - t[0].head<2>();
            const double s = (p.x() * c.y() - p.y() * c.x()) / twice;
            const double r = (b.x() * p.y() - b.y() * p.x()) / twice;
            if (s < 0 || r < 0 || s + r > 1)
                continue;
            double& at =
                depth[static_cast<std::size_t>(y) * static_cast<std::size_t>(picture.across) +
                      static_cast<std::size_t>(x)];
            at = std::max(at, t[0].z() + s * (t[1].z() - t[0].z()) + r * (t[2].z() - t[0].z()));
        }
}

} // namespace

ZBuffer::ZBuffer(const TriangleMesh& lit, std::span<const TriangleMesh> others, Length pixel)
    : lit_(lit), others_(others), pixel_mm_(in_mm(pixel))
{
}

Area ZBuffer::visible_toward(const Direction& toward) const
{
    const ViewPlane plane(toward);
    const std::vector<Point> lit = in_view(lit_, plane);
    Picture picture = picture_over(lit, pixel_mm_);
    for (const Facet& f : lit_.facets) {
        const std::array t{lit[f[0]], lit[f[1]], lit[f[2]]};
        const Point2 b = (t[1] - t[0]).head<2>();
        const Point2 c = (t[2] - t[0]).head<2>();
        // What turns its back blocks and does not shine.
        draw(picture, t, b.x() * c.y() > b.y() * c.x() ? picture.lit : picture.front);
    }
    for (const TriangleMesh& mesh : others_) {
        const std::vector<Point> points = in_view(mesh, plane);
        for (const Facet& f : mesh.facets)
            draw(picture, {points[f[0]], points[f[1]], points[f[2]]}, picture.front);
    }
    double count = 0;
    for (std::size_t i = 0; i < picture.lit.size(); ++i)
        count +=
            std::isfinite(picture.lit[i]) && picture.front[i] <= picture.lit[i] + same_depth_mm;
    return square_millimetres(count * pixel_mm_ * pixel_mm_);
}

} // namespace glim::bench
