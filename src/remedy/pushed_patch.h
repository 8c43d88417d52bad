#pragma once

#include "model/study.h"
#include "visibility/prepared_scene.h"

namespace glim {

/// Reshapeable surfaces that are pushed the same way and stand before the same lamps, as one mesh:
/// a seam between two of them stays closed whatever is pushed.
struct PushedPatch {
    Direction push = Direction::x(); ///< of what is drawn, vehicle frame
    std::vector<SurfaceId> surfaces;
    TriangleMesh mesh;             ///< vehicle frame, as drawn, points welded
    std::vector<std::uint32_t> of; ///< one a facet: place in `surfaces`
};

/// Every surface that may be reshaped, in the study's order. Throws InputError where none may be,
/// and where one has to say which way it is pushed.
std::vector<PushedPatch> pushed_patches(const Study& study);

/// The facets of `mesh` that `of` puts down to one surface.
TriangleMesh mesh_of(const TriangleMesh& mesh, const std::vector<std::uint32_t>& of,
                     std::uint32_t surface);

/// An edge of a standing patch, with the facets beside it.
struct PatchEdge {
    static constexpr std::uint32_t no_facet = ~std::uint32_t{0};

    std::uint32_t from, to;          ///< places among the points
    std::uint32_t first;             ///< a facet beside it
    std::uint32_t second = no_facet; ///< the other, where two facets meet as neighbours should
    bool runs_alike = false;         ///< both facets run along it the same way: inside out
};

/// A patch where it stands, drawn or as its twin, ready to be looked along.
struct StandingPatch {
    std::size_t patch = 0; ///< place among the patches
    bool twin = false;
    Placement where;              ///< scene frame from the patch's mesh
    Vector push = Vector::Zero(); ///< unit, as it stands
    std::vector<Point> points;    ///< scene frame, in the order of the patch's mesh
    std::vector<Facet> facets;
    std::vector<Vector> normals; ///< one a facet; of any length
    std::vector<PatchEdge> edges;
};
StandingPatch standing_patch(const PushedPatch& patch, std::size_t place, bool twin,
                             const Vehicle& vehicle, const Point& scene_origin);

} // namespace glim
