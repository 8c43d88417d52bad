#pragma once

#include "geometry/triangle_mesh.h"

#include <span>
#include <vector>

namespace glim {

/// A lit surface divided into cells, with every corner and edge that cells share held once. Made
/// once for a lamp, used for every direction.
///
/// Across each facet run rows parallel to its shortest edge, from end to end. Neighbouring rows are
/// no further apart than the pitch, nor are neighbouring corners in a row: so slivers need few
/// cells, and a straight bar of the pitch's width, which must run into a row or stand between two,
/// cannot slip between the corners of a facet. Facets that cut their common
/// edge into as many parts share the corners on it; others have corners of their own there, which
/// costs rays and nothing else.
class LitLattice {
public:
    using Index = std::uint32_t;

    struct LitFacet {
        Vector normal; ///< unit; zero for a facet without area
        double area_mm2;
        Index corner; ///< one of its vertices
    };
    struct Cell {
        std::array<Index, 3> corners; ///< counter-clockwise
        std::array<Index, 3> edges;   ///< edge i runs from corner i to corner i + 1
        Index facet;
        double area_mm2;
    };
    struct Edge {
        std::array<Index, 2> ends;
    };

    /// `lit` in the scene frame, normals towards the light. Requires: pitch > 0.
    LitLattice(const TriangleMesh& lit, Length pitch);

    Length pitch() const { return pitch_; }
    const std::vector<LitFacet>& facets() const { return facets_; }
    const std::vector<Point>& vertices() const { return vertices_; }
    const std::vector<Cell>& cells() const { return cells_; }
    const std::vector<Edge>& edges() const { return edges_; }
    /// The lit facets that a vertex belongs to: one inside a facet, more on its rim.
    std::span<const Index> facets_at(Index vertex) const;

private:
    void number_edges();
    void gather_facets_at_vertices();

    Length pitch_;
    std::vector<LitFacet> facets_;
    std::vector<Point> vertices_;
    std::vector<Cell> cells_;
    std::vector<Edge> edges_;
    std::vector<Index> facets_at_; ///< all vertices' facets behind each other
    std::vector<Index> facets_at_from_;
};

} // namespace glim
