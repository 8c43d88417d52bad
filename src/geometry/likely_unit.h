#pragma once

#include "geometry/triangle_mesh.h"

#include <string>
#include <string_view>

namespace glim {

/// A unit that a mesh file may be drawn in; the word is the study file's.
struct MeshUnit {
    std::string_view word;
    Length one; ///< how long a coordinate of 1 is
};
inline constexpr std::array mesh_units = {
    MeshUnit{"mm", millimetres(1)},       MeshUnit{"m", millimetres(1000)},
    MeshUnit{"cm", millimetres(10)},      MeshUnit{"inch", millimetres(25.4)},
    MeshUnit{"foot", millimetres(304.8)},
};

/// The longest side of a piece worth looking at, from a lamp's surroundings to a long front half:
/// both ends belong to it.
inline constexpr Length shortest_likely_mesh = millimetres(300);
inline constexpr Length longest_likely_mesh = millimetres(6000);

/// A hint for people, never to decide with: the units in which `box`, given in a file's own unit,
/// would be as large as the front of a vehicle. The likeliest first: the one that brings the
/// longest side nearest (by ratio) to the width of a car, 1.8 m.
std::vector<MeshUnit> likely_units(const Box& box);

/// "likely mm (1902 x 870 x 812 mm)", with "or cm (...)" for every further candidate; "no likely
/// unit: the longest side is 45000 in the file's own" where there is none. The numbers are the
/// sides along the file's x, y and z, in whole millimetres.
std::string likely_unit_words(const Box& box);

} // namespace glim
