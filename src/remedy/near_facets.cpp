#include "remedy/near_facets.h"

#include "geometry/point_normals.h"
#include "machine/stop.h"
#include "remedy/way_to_space.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace glim {

namespace {

/// Facets are first looked at together in cubes of this side: most of a body is far from all
/// spaces.
constexpr double cube_mm = 60;

struct Cube {
    std::array<std::int32_t, 3> place;
    std::uint32_t facet;
};

/// The facets, sorted by the cube that their middle is in.
std::vector<Cube> in_cubes(const TriangleMesh& mesh)
{
    std::vector<Cube> cubes(mesh.facets.size());
    for (std::size_t f = 0; f < cubes.size(); ++f) {
        const Point middle = (mesh.corner(f, 0) + mesh.corner(f, 1) + mesh.corner(f, 2)) / 3;
        cubes[f].facet = static_cast<std::uint32_t>(f);
        for (int i = 0; i < 3; ++i)
            cubes[f].place[i] = static_cast<std::int32_t>(std::floor(middle[i] / cube_mm));
    }
    std::sort(cubes.begin(), cubes.end(), [](const Cube& a, const Cube& b) {
        return std::tie(a.place, a.facet) < std::tie(b.place, b.facet);
    });
    return cubes;
}

std::array<Point, 8> corners_of(const Box& box)
{
    std::array<Point, 8> corners;
    for (int i = 0; i < 8; ++i)
        corners[i] = {(i & 1) != 0 ? box.most.x() : box.least.x(),
                      (i & 2) != 0 ? box.most.y() : box.least.y(),
                      (i & 4) != 0 ? box.most.z() : box.least.z()};
    return corners;
}

/// Facets of cubes that a space may come near to, in their order.
std::vector<std::uint32_t> in_near_cubes(const TriangleMesh& mesh, const SpaceList& spaces,
                                         const Workers& workers)
{
    const std::vector<Cube> cubes = in_cubes(mesh);
    std::vector<std::size_t> first;
    for (std::size_t i = 0; i < cubes.size(); ++i)
        if (i == 0 || cubes[i].place != cubes[i - 1].place)
            first.push_back(i);
    first.push_back(cubes.size());
    std::vector<std::uint8_t> is_near(first.size() - 1, 0);
    const bool done = for_each_index(is_near.size(), workers, [&](std::size_t c, unsigned) {
        Box box;
        for (std::size_t i = first[c]; i < first[c + 1]; ++i)
            for (int k = 0; k < 3; ++k)
                box.add(mesh.corner(cubes[i].facet, k));
        box.least.array() -= in_mm(farthest_way_in);
        box.most.array() += in_mm(farthest_way_in);
        is_near[c] = may_meet(spaces, corners_of(box)) ? 1 : 0;
    });
    if (!done)
        throw Stopped();
    std::vector<std::uint32_t> facets;
    for (std::size_t c = 0; c < is_near.size(); ++c)
        for (std::size_t i = first[c]; is_near[c] != 0 && i < first[c + 1]; ++i)
            facets.push_back(cubes[i].facet);
    std::sort(facets.begin(), facets.end());
    return facets;
}

} // namespace

bool may_meet(const SpaceList& spaces, std::span<const Point> corners)
{
    std::array<Point, SightSheaf::most_corners> level;
    return std::any_of(spaces.begin(), spaces.end(), [&](const ClearSpace* space) {
        for (std::size_t i = 0; i < corners.size(); ++i)
            level[i] = space->frame.into(corners[i]);
        return space->set.may_meet({level.data(), corners.size()});
    });
}

bool may_meet(const SpaceList& spaces, const SweptFacet& swept)
{
    std::array<Point, 6> corners;
    for (int i = 0; i < 3; ++i) {
        const std::uint32_t p = swept.mesh.facets[swept.facet][i];
        corners[i] = swept.mesh.points[p];
        corners[i + 3] = corners[i] + in_mm(swept.by) * swept.normals[p];
    }
    return may_meet(spaces, corners);
}

NearFacets near_facets(const TriangleMesh& mesh, const SpaceList& spaces, const Workers& workers)
{
    const std::vector<std::uint32_t> candidates = in_near_cubes(mesh, spaces, workers);
    const std::vector<Vector> normals = point_normals(mesh);
    std::vector<std::uint8_t> is_near(mesh.facets.size(), 0);
    const bool done = for_each_index(candidates.size(), workers, [&](std::size_t i, unsigned) {
        is_near[candidates[i]] =
            may_meet(spaces, SweptFacet{mesh, candidates[i], normals, farthest_way_in}) ? 1 : 0;
    });
    if (!done)
        throw Stopped();
    std::vector<std::uint8_t> has_near(mesh.points.size(), 0);
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        for (const std::uint32_t p : mesh.facets[f])
            has_near[p] |= is_near[f];
    NearFacets parted;
    std::vector<std::uint32_t> near, rest;
    for (std::uint32_t f = 0; f < mesh.facets.size(); ++f) {
        const bool is_taken = std::any_of(mesh.facets[f].begin(), mesh.facets[f].end(),
                                          [&](std::uint32_t p) { return has_near[p] != 0; });
        (is_taken ? near : rest).push_back(f);
        if (is_taken)
            parted.is_near.push_back(is_near[f]);
    }
    parted.near = part_of(mesh, near);
    parted.rest = part_of(mesh, rest);
    return parted;
}

} // namespace glim
