#include "geometry/facet_tree.h"

#include "geometry/facet_distance.h"

#include <cmath>

namespace glim {

namespace {

std::vector<Eigen::AlignedBox3d> boxes_of(const TriangleMesh& mesh)
{
    std::vector<Eigen::AlignedBox3d> boxes(mesh.facets.size());
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        for (int i = 0; i < 3; ++i)
            boxes[f].extend(mesh.corner(f, i));
    return boxes;
}

} // namespace

FacetTree::FacetTree(const TriangleMesh& mesh) : mesh_(&mesh), tree_(boxes_of(mesh)) {}

std::optional<NearestFacet> FacetTree::nearest(const Point& p, Length reach) const
{
    std::optional<NearestFacet> best;
    double squared_reach = in_mm(reach) * in_mm(reach);
    tree_.visit(Eigen::AlignedBox3d(p), squared_reach, [&](std::size_t facet) {
        const Point point = nearest_on_facet(*mesh_, facet, p);
        const double squared = (point - p).squaredNorm();
        if (squared < squared_reach ||
            (squared == squared_reach && (!best || facet < best->facet))) {
            squared_reach = squared;
            best = NearestFacet{facet, point, millimetres(std::sqrt(squared))};
        }
    });
    return best;
}

} // namespace glim
