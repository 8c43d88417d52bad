#pragma once

#include "geometry/vector.h"
#include "units/units.h"

#include <array>
#include <cstdint>
#include <limits>
#include <span>
#include <vector>

namespace glim {

/// Three places in `TriangleMesh::points`, counter-clockwise seen from the outside.
using Facet = std::array<std::uint32_t, 3>;

/// A soup of triangles: anything is allowed that a real file holds (duplicate, non-manifold,
/// degenerate, inconsistently wound faces), because whatever is dropped turns see-through.
/// Coordinates are in millimetres. Requires: every corner index is below points.size().
struct TriangleMesh {
    std::vector<Point> points;
    std::vector<Facet> facets;

    const Point& corner(std::size_t facet, int i) const { return points[facets[facet][i]]; }
};

/// The facet's area times its unit normal; zero for a degenerate facet.
Vector area_vector(const TriangleMesh& mesh, std::size_t facet);

Area area_of(const TriangleMesh& mesh);

/// The facets listed, with the points they use, in the order given. Points keep their order.
TriangleMesh part_of(const TriangleMesh& mesh, std::span<const std::uint32_t> facets);

/// Every facet wound the other way: inside becomes outside.
TriangleMesh turned_over(TriangleMesh mesh);

/// An axis-parallel box, closed; empty (least > most) until something is added.
struct Box {
    Point least = Point::Constant(std::numeric_limits<double>::infinity());
    Point most = Point::Constant(-std::numeric_limits<double>::infinity());

    void add(const Point& p);
    bool empty() const { return (least.array() > most.array()).any(); }
    bool holds(const Point& p) const;
    Vector size() const { return most - least; }
    Point centre() const { return (least + most) / 2; }
};

Box box_of(const TriangleMesh& mesh);

} // namespace glim
