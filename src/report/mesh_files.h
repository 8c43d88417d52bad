#pragma once

#include "drawing/colour.h"
#include "geometry/triangle_mesh.h"

#include <span>
#include <string>
#include <vector>

namespace glim {

// Meshes as files for other programs: mm, in the vehicle's frame. Every point reads back as the
// same doubles from OBJ; PLY and STL hold floats (0.0003 mm at 4 m).

struct NamedPart {
    std::string name;
    const TriangleMesh* mesh = nullptr;
};

/// OBJ: each part an object of its name; a name's blanks become `_`, for readers split at them.
std::string obj_of(std::span<const NamedPart> parts);

/// A figure for each point of a mesh, and its colour.
struct PointFigures {
    std::string property; ///< of the PLY, unit included: "depth_mm"
    std::vector<double> figures;
    std::vector<Colour> colours;
};

/// PLY 1.0, binary, little-endian, with the figures and colours at its vertices. `comment` on one
/// line, in ASCII. Requires: as many figures and colours as points.
std::string ply_of(const TriangleMesh& mesh, const PointFigures& painted,
                   const std::string& comment);

/// STL, binary, little-endian; degenerate facets have the normal 0. `comment` is cut at 80 bytes.
std::string stl_of(const TriangleMesh& mesh, const std::string& comment);

} // namespace glim
