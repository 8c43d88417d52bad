#pragma once

#include "geometry/mesh_health.h"
#include "model/mesh_file.h"
#include "report/json.h"
#include "words/text_block.h"

#include <string>
#include <vector>

namespace glim {

/// What `inspect` tells of one part of a mesh file.
struct PartFacts {
    MeshPart part;
    std::size_t facets = 0;
    Box box; ///< in the file's own unit and axes
};

/// What `inspect` tells of a mesh file. Lengths are in the file's own unit, which it does not say.
struct MeshFacts {
    std::string file; ///< as the user wrote it
    std::string format;
    std::size_t points_in_file = 0;
    std::size_t polygons_in_file = 0;
    std::size_t crossed_polygons = 0;
    std::size_t curved_surfaces = 0;
    int decimals = 0;
    Box box;
    MeshHealth health;
    double chord_error = 0;       ///< estimated, in the file's own unit
    std::vector<PartFacts> parts; ///< in the file's order
};

MeshFacts mesh_facts(const MeshFile& mesh, std::string file);

std::string mesh_words(const MeshFacts& facts, const TextStyle& style = {});

Json mesh_json(const MeshFacts& facts);

} // namespace glim
