#pragma once

#include "geometry/direction.h"
#include "visibility/lit_lattice.h"
#include "visibility/touch.h"

namespace glim {

/// A lattice as one direction shows it as drawn, and how far bodies may move before it may look
/// otherwise.
struct LatticeDoubts {
    std::vector<float> corners;       ///< mm, one a corner; infinity: farther than any body moves
    std::vector<std::uint8_t> hidden; ///< one a corner
    float reach;                      ///< of the bodies, mm
    double doubtful_cosine;           ///< facets that slanted may turn towards the eye or away

    /// Below 0: it never faces the eye. `cosine`: of its facet.
    float of(const LitLattice::Cell& cell, double cosine) const;
};

/// What of a lattice may look otherwise than as drawn toward one direction, by doubt; the rest is
/// summed up.
struct NearLattice {
    using Index = std::uint32_t;

    struct Cell {
        std::array<Index, 3> corners, edges;
        Index facet;
        double area_mm2;
    };
    struct FacetsAt {
        Index first, count; ///< in `facets_at`
    };

    NearLattice(const LitLattice& lattice, const Direction& toward, const LatticeDoubts& doubts);

    /// So many cells, the first ones, may look otherwise where nothing moves farther.
    std::size_t doubtful_cells(Length reach) const;

    std::vector<Cell> cells; ///< the most doubtful first
    std::vector<float> cell_doubts;
    /// The area vectors of the cells from there on that are lit as drawn, and of those left out.
    std::vector<Vector> lit_from;
    std::vector<Index> vertices; ///< places in the lattice, ascending
    std::vector<Point> points;   ///< theirs
    std::vector<FacetsAt> corner_facets;
    std::vector<Index> facets_at;
    std::vector<std::array<Index, 2>> edges; ///< their ends
    std::vector<Vector> normals;             ///< of facets

private:
    void keep_cells(const LitLattice& lattice, const Direction& toward,
                    const LatticeDoubts& doubts);
    void keep_corners(const LitLattice& lattice);
};

/// How the facets of such a lattice stand to an eye.
struct Slants {
    /// Of a corner from which no ray starts, because no facet there faces the eye.
    static constexpr float faces_away = -1;

    Slants(const NearLattice& lattice, const Direction& toward, Length touch);

    std::vector<double> cosines; ///< one a facet; above 0: faces the eye
    std::vector<float> skips;    ///< one a corner, by the most slanted facet that faces the eye, mm
};

} // namespace glim
