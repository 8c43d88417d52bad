#include "visibility/touch_zone.h"

#include "visibility/ray_grain.h"
#include "visibility/touch.h"

#include <algorithm>

namespace glim {

namespace {

/// A facet's own corners and its flat neighbours' lie in its plane but for rounding; they are never
/// in the way.
constexpr double in_plane_mm = 1e-9;

Box box_about(const NearTriangle& triangle, double margin)
{
    Box box;
    for (const Point& p : triangle.corners)
        box.add(p);
    return {box.least.array() - margin, box.most.array() + margin};
}

bool meets(const CellTree::Node& node, const Box& box)
{
    return ((node.centre - node.half).array() <= box.most.array()).all() &&
           ((node.centre + node.half).array() >= box.least.array()).all();
}

NearTriangle triangle_of(const SceneMesh& mesh, const Facet& f)
{
    NearTriangle triangle{
        {mesh.points[f[0]], mesh.points[f[1]], mesh.points[f[2]]}, 0, mesh.approved, mesh.lit};
    if (mesh.mirrored)
        std::swap(triangle.corners[1], triangle.corners[2]);
    double furthest = 0;
    for (const Point& p : triangle.corners)
        furthest = std::max(furthest, p.norm());
    triangle.grain = static_cast<float>(in_mm(ray_grain(millimetres(furthest), mesh.shift)));
    return triangle;
}

/// The lit facets that have cells within the box, ascending.
std::vector<LitLattice::Index> facets_near(const LitLattice& lattice, const CellTree& tree,
                                           const Box& box)
{
    std::vector<LitLattice::Index> facets;
    tree.visit([&](const CellTree::Node& node) { return meets(node, box); },
               [&](LitLattice::Index cell) { facets.push_back(lattice.cells()[cell].facet); });
    std::sort(facets.begin(), facets.end());
    facets.erase(std::unique(facets.begin(), facets.end()), facets.end());
    return facets;
}

} // namespace

TouchZone::TouchZone(const LitLattice& lattice, Length touch)
    : reach_(in_mm(skip_along_ray(touch, 0))), pairs_(lattice.facets().size())
{
}

void TouchZone::add(const LitLattice& lattice, const CellTree& tree, const SceneMesh& mesh)
{
    if (tree.empty())
        return;
    for (const Facet& f : mesh.mesh->facets) {
        const NearTriangle triangle = triangle_of(mesh, f);
        const Box box = box_about(triangle, reach_ + triangle.grain);
        if (!meets(tree.root(), box))
            continue;
        const auto place = static_cast<Index>(triangles_.size());
        bool used = false;
        for (const Index facet : facets_near(lattice, tree, box)) {
            const Point& on_facet = lattice.vertices()[lattice.facets()[facet].corner];
            std::array<double, 3> height{};
            for (int i = 0; i < 3; ++i)
                height[i] = lattice.facets()[facet].normal.dot(triangle.corners[i] - on_facet);
            const auto [least, most] = std::minmax_element(height.begin(), height.end());
            if (*most <= in_plane_mm || *least > reach_ + triangle.grain)
                continue;
            pairs_[facet].push_back({place, static_cast<float>(*most) + triangle.grain});
            used = true;
        }
        if (used)
            triangles_.push_back(triangle);
    }
}

void TouchZone::sort_by_height()
{
    for (std::vector<NearPair>& pairs : pairs_)
        std::stable_sort(pairs.begin(), pairs.end(), [](const NearPair& a, const NearPair& b) {
            return a.most_height > b.most_height;
        });
}

} // namespace glim
