#include "judgement/lamp_parts.h"

#include "geometry/components.h"
#include "geometry/covered_area.h"
#include "geometry/enclosing_quadrilateral.h"
#include "geometry/gap.h"
#include "geometry/weld.h"

#include <algorithm>

namespace glim {

namespace {

std::vector<PlaneTriangle> projected(const TriangleMesh& mesh, const ViewPlane& plane)
{
    std::vector<PlaneTriangle> triangles;
    triangles.reserve(mesh.facets.size());
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        triangles.push_back({plane.project(mesh.corner(f, 0)), plane.project(mesh.corner(f, 1)),
                             plane.project(mesh.corner(f, 2))});
    return triangles;
}

std::vector<TriangleSet> pieces_of(const TriangleMesh& apparent,
                                   std::span<const PlaneTriangle> seen)
{
    const std::vector<std::uint32_t> numbers = components_of(welded(apparent));
    std::vector<std::vector<PlaneTriangle>> triangles;
    for (std::size_t f = 0; f < seen.size(); ++f) {
        if (numbers[f] == triangles.size())
            triangles.emplace_back();
        triangles[numbers[f]].push_back(seen[f]);
    }
    std::vector<TriangleSet> pieces;
    pieces.reserve(triangles.size());
    for (std::vector<PlaneTriangle>& piece : triangles)
        pieces.emplace_back(std::move(piece));
    return pieces;
}

/// The gaps of the shortest tree that joins all pieces, grown from the first, always by the piece
/// that is nearest to those joined already.
std::vector<Length> bridged_gaps(std::span<const TriangleSet> pieces)
{
    constexpr Length infinite = millimetres(std::numeric_limits<double>::infinity());
    std::vector<Length> to_joined(pieces.size(), infinite);
    std::vector<std::size_t> apart(pieces.size());
    for (std::size_t i = 0; i < apart.size(); ++i)
        apart[i] = i;
    std::vector<Length> gaps;
    std::size_t newest = 0;
    for (apart.erase(apart.begin()); !apart.empty();) {
        for (const std::size_t i : apart)
            if (const auto gap = gap_between(pieces[i], pieces[newest], to_joined[i]))
                to_joined[i] = std::min(to_joined[i], gap->distance);
        const auto nearest =
            std::min_element(apart.begin(), apart.end(), [&](std::size_t a, std::size_t b) {
                return to_joined[a] < to_joined[b];
            });
        newest = *nearest;
        gaps.push_back(to_joined[newest]);
        apart.erase(nearest);
    }
    return gaps;
}

double share_filled(std::span<const PlaneTriangle> seen)
{
    std::vector<Point2> corners;
    for (const PlaneTriangle& t : seen)
        corners.insert(corners.end(), t.begin(), t.end());
    const Area around = smallest_quadrilateral(corners).area;
    return around > Area() ? std::min(1.0, covered_area(seen) / around) : 0;
}

} // namespace

PartsOfLamp parts_of_lamp(const TriangleMesh& lit, const Direction& axis)
{
    const TriangleMesh apparent = apparent_surface(lit, axis);
    if (apparent.facets.empty())
        return {};
    const std::vector<PlaneTriangle> seen = projected(apparent, ViewPlane(axis));
    PartsOfLamp result{1, share_filled(seen), {}};
    for (const Length gap : bridged_gaps(pieces_of(apparent, seen)))
        if (gap > touching_parts) {
            ++result.parts;
            result.widest_gap = std::max(result.widest_gap, gap);
        }
    return result;
}

} // namespace glim
