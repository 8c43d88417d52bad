#pragma once

#include "input/table_reader.h"
#include "model/mesh_file.h"
#include "model/vehicle.h"

#include <optional>
#include <string>
#include <vector>

namespace glim {

/// Which facets of one mesh a surface takes: those that satisfy everything given here.
struct Selection {
    std::vector<Reference> objects = {};   ///< patterns; one of them must fit
    std::vector<Reference> groups = {};    ///< likewise: the whole name, or one of its words
    std::vector<Reference> materials = {}; ///< likewise
    std::optional<Side> side = {}; ///< of the facet's centroid; on the median plane counts as left
    std::optional<Box> box = {};   ///< holds the facet's centroid; vehicle frame
    std::optional<Vector> facing = {}; ///< the facet's outside looks that way, within 90 degrees
    std::optional<Point> component_at = {};
};

/// A mesh in the vehicle's frame and in mm, with the names that its file gives.
struct NamedMesh {
    TriangleMesh mesh;
    std::vector<MeshPart> parts;
    std::vector<std::uint32_t> part_of_facet; ///< place in `parts`, one a facet
};

/// The facets chosen, in the order of the mesh. `component_at` works on what the other keys leave:
/// of the pieces connected over shared corners, the one with the facet nearest to the point.
std::vector<std::uint32_t> selected_facets(const NamedMesh& mesh, const Selection& selection,
                                           const Vehicle& vehicle);

/// Patterns that fit nothing in this mesh become complaints with the names there are, nearest
/// first. Returns how many complaints that made.
std::size_t complain_of_idle_patterns(const NamedMesh& mesh, const Selection& selection,
                                      Complaints& complaints);

} // namespace glim
