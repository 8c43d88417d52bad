#include "shapes/box_tree.h"

#include <CGAL/AABB_traits.h>
#include <CGAL/AABB_tree.h>
#include <CGAL/AABB_triangle_primitive.h>
#include <CGAL/Simple_cartesian.h>

namespace glim::shapes {

namespace {

using Kernel = CGAL::Simple_cartesian<double>;
using Triangles = std::vector<Kernel::Triangle_3>;
using Primitive = CGAL::AABB_triangle_primitive<Kernel, Triangles::iterator>;

constexpr double reach_mm = 10000;

Kernel::Point_3 of(const Point& p) { return {p.x(), p.y(), p.z()}; }

} // namespace

struct BoxTree::Tree {
    Triangles triangles;
    CGAL::AABB_tree<CGAL::AABB_traits<Kernel, Primitive>> boxes;
};

BoxTree::BoxTree(const std::vector<TriangleMesh>& meshes) : tree_(std::make_unique<Tree>())
{
    for (const TriangleMesh& mesh : meshes)
        for (std::size_t f = 0; f < mesh.facets.size(); ++f)
            if (area_vector(mesh, f).norm() > 0) // CGAL refuses facets without area
                tree_->triangles.emplace_back(of(mesh.corner(f, 0)), of(mesh.corner(f, 1)),
                                              of(mesh.corner(f, 2)));
    tree_->boxes.insert(tree_->triangles.begin(), tree_->triangles.end());
    tree_->boxes.build();
}

BoxTree::~BoxTree() = default;

bool BoxTree::blocks(const Point& from, const Direction& toward) const
{
    return tree_->boxes.do_intersect(
        Kernel::Segment_3(of(from), of(from + reach_mm * toward.vector())));
}

} // namespace glim::shapes
