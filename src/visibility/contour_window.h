#pragma once

#include "machine/workers.h"
#include "visibility/contour_edges.h"
#include "visibility/direction_tiles.h"

namespace glim {

/// A ball, closed; in the scene frame.
struct Ball {
    Point centre;
    double radius;
};

/// A mesh as it stands in the scene frame.
struct SceneMesh {
    const TriangleMesh* mesh;
    std::vector<Point> points; ///< placed
    Length shift;              ///< see ray_grain
    bool mirrored;             ///< facets run clockwise, seen from their outside
    bool approved, lit;        ///< see PlacedMesh
};

/// The edges of obstacles that may draw a shadow's rim on a lamp, gathered once for a set of
/// directions, tile by tile: those that lie before the lamp, and whose facets may part there.
class ContourWindow {
public:
    /// `lamp` holds all lit cells.
    ContourWindow(const Ball& lamp, std::span<const Direction> directions);

    /// Requires: sort_into_tiles not called yet.
    void add(const SceneMesh& mesh);
    /// To be called once, after the last mesh.
    void sort_into_tiles(const Workers& workers);

    /// Whether edges were gathered for a direction like this.
    bool covers(const Direction& toward) const { return tiles_.place_of(toward).has_value(); }

    /// Calls `act(edge)` for each edge that is an outline along `toward`. Requires: covers(toward).
    template <class Act>
    void visit_outlines(const Direction& toward, const Act& act) const
    {
        for (const std::uint32_t place : edges_of_tile_[*tiles_.place_of(toward)])
            if (edges_[place].is_outline(toward.vector()))
                act(edges_[place]);
    }

private:
    bool is_before_lamp(const Ball& ball) const;

    Ball lamp_;
    DirectionTiles tiles_;
    std::vector<ContourEdge> edges_;
    std::vector<std::vector<std::uint32_t>> edges_of_tile_; ///< places in edges_
};

} // namespace glim
