#include "judgement/lamp_parts.h"

#include "geometry/components.h"
#include "geometry/covered_area.h"
#include "geometry/enclosing_quadrilateral.h"
#include "geometry/gap.h"
#include "geometry/groups.h"
#include "geometry/weld.h"

#include <algorithm>
#include <numeric>

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

/// Facets that hang together: over shared corners, or by touching as they are seen.
Groups groups_of(const TriangleMesh& apparent, std::span<const PlaneTriangle> seen)
{
    Groups groups(seen.size());
    const std::vector<std::uint32_t> components = components_of(welded(apparent));
    std::vector<std::uint32_t> first_of_component;
    for (std::uint32_t f = 0; f < seen.size(); ++f) {
        if (components[f] == first_of_component.size())
            first_of_component.push_back(f);
        groups.join(first_of_component[components[f]], f);
    }
    const TriangleTree tree(seen);
    const double squared_reach = in_mm(touching_parts) * in_mm(touching_parts);
    for (std::uint32_t f = 0; f < seen.size(); ++f)
        tree.visit(box_of(seen[f]), squared_reach, [&](std::size_t place) {
            const auto other = static_cast<std::uint32_t>(place);
            if (!groups.together(f, other) &&
                gap_between(seen[f], seen[other]).distance <= touching_parts)
                groups.join(f, other);
        });
    return groups;
}

/// In the order of their first facets.
std::vector<TriangleSet> parts_of(std::span<const PlaneTriangle> seen, Groups groups)
{
    constexpr std::size_t unnumbered = std::numeric_limits<std::size_t>::max();
    std::vector<std::size_t> number_of_root(seen.size(), unnumbered);
    std::vector<std::vector<PlaneTriangle>> triangles;
    for (std::uint32_t f = 0; f < seen.size(); ++f) {
        std::size_t& number = number_of_root[groups.root_of(f)];
        if (number == unnumbered) {
            number = triangles.size();
            triangles.emplace_back();
        }
        triangles[number].push_back(seen[f]);
    }
    std::vector<TriangleSet> parts;
    parts.reserve(triangles.size());
    for (std::vector<PlaneTriangle>& part : triangles)
        parts.emplace_back(std::move(part));
    return parts;
}

/// The longest way in the shortest tree that joins all parts. The tree grows from the first part,
/// always by the one that is nearest to those joined already.
Length widest_bridged(std::span<const TriangleSet> parts)
{
    constexpr Length infinite = millimetres(std::numeric_limits<double>::infinity());
    std::vector<Length> to_joined(parts.size(), infinite);
    std::vector<std::size_t> apart(parts.size() - 1);
    std::iota(apart.begin(), apart.end(), std::size_t{1});
    Length widest;
    for (std::size_t newest = 0; !apart.empty();) {
        for (const std::size_t i : apart)
            if (const auto gap = gap_between(parts[i], parts[newest], to_joined[i]))
                to_joined[i] = gap->distance;
        const auto nearest =
            std::min_element(apart.begin(), apart.end(), [&](std::size_t a, std::size_t b) {
                return to_joined[a] < to_joined[b];
            });
        newest = *nearest;
        widest = std::max(widest, to_joined[newest]);
        apart.erase(nearest);
    }
    return widest;
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
    const std::vector<TriangleSet> parts = parts_of(seen, groups_of(apparent, seen));
    return {parts.size(), share_filled(seen), widest_bridged(parts)};
}

} // namespace glim
