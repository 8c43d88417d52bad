#pragma once

#include "model/lamp_light.h"
#include "visibility/lit_lattice.h"

namespace glim {

/// The lit face whose brightness is asked. All in one frame, whose axes are the vehicle's.
struct LitFace {
    const LitLattice& lattice;
    const TriangleMesh& mesh;             ///< that the lattice was made from
    const std::vector<std::uint32_t>& of; ///< of each facet its place in Lamp::emits
    Direction axis;                       ///< the lamp's reference axis as it stands
    Direction up;
    bool twin = false; ///< the mirror image of the drawn lamp
};

/// How bright each cell of the lattice is, in any one unit; empty where all are alike. Of a
/// luminance picture a cell takes the value of the pixel under its middle, and beyond the picture
/// that of the nearest; a twin takes the mirror image.
std::vector<float> cell_brightness(const Brightness& brightness, const LitFace& face);

} // namespace glim
