#pragma once

#include "model/intensity_grid.h"

#include <array>
#include <string_view>

namespace glim {

/// Which part of a distribution a file leaves out because it is the mirror image of another.
enum class FiledSymmetry {
    none,
    about_pole,     ///< one C plane stands for all
    plane_c0_c180,  ///< C and -C are alike
    plane_c90_c270, ///< C and 180 - C are alike
    both_planes,    ///< both of these
    vertical_plane, ///< types a and b: H and -H are alike
};

struct FiledSymmetryWord {
    FiledSymmetry symmetry;
    std::string_view key;
    std::string_view words; ///< for people
};
inline constexpr std::array filed_symmetry_words = {
    FiledSymmetryWord{FiledSymmetry::none, "none", "none used by the file"},
    FiledSymmetryWord{FiledSymmetry::about_pole, "about_pole", "the same all round the pole"},
    FiledSymmetryWord{FiledSymmetry::plane_c0_c180, "plane_c0_c180",
                      "about the plane C 0 to C 180"},
    FiledSymmetryWord{FiledSymmetry::plane_c90_c270, "plane_c90_c270",
                      "about the plane C 90 to C 270"},
    FiledSymmetryWord{FiledSymmetry::both_planes, "both_planes",
                      "about the planes C 0 to C 180 and C 90 to C 270"},
    FiledSymmetryWord{FiledSymmetry::vertical_plane, "vertical_plane",
                      "about the vertical plane H 0"},
};

/// `filed` with its mirror images, and with C 360 where type c goes round. Numbers are copied; only
/// where no plane comes to lie at C 0 that one is interpolated, as it would be anyhow.
///
/// Requires of type c, angles taken modulo 360: one plane for `about_pole`; planes from 0 to 180
/// for `plane_c0_c180`, from 90 or 270 over half a turn for `plane_c90_c270`, from 0 to 90 for
/// `both_planes`; for `none` planes from 0 on. Of a and b with `vertical_plane`: H from 0 on.
IntensityGrid expanded(const IntensityGrid& filed, FiledSymmetry symmetry);

} // namespace glim
