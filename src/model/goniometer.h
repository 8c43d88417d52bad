#pragma once

#include "geometry/direction.h"
#include "units/units.h"

#include <array>
#include <string_view>

namespace glim {

/// How the two angles of a photometric file turn, named as LM-63 names them. Each has axes x, y, z
/// of its own, in which a direction from the lamp is
///
///     a   (cosV cosH, cosV sinH, sinV)            V about the vertical pole z, H in the level
///     plane b   (cosH cosV, sinH, cosH sinV)            H from the horizontal pole y, V about it
///     c   (sin g cosC, sin g sinC, -cos g)        g from the nadir -z, C about the pole
///
/// Senses, the lamp standing upright and z pointing up: in a and b +y is to the *right* as seen
/// from the lamp looking out along x (H runs clockwise seen from above); in c plane C 90 is to the
/// *left* of one who looks out along C 0 (C runs counter-clockwise seen from above).
enum class Goniometer { a, b, c };

/// The two angles as a file gives them: H and V in types a and b; in type c the C plane is `h` and
/// gamma is `v`.
struct FileAngles {
    Angle h;
    Angle v;
    friend bool operator==(const FileAngles&, const FileAngles&) = default;
};

/// The unit vector in the file's own axes; exact at multiples of 90 degrees.
Vector file_vector(Goniometer goniometer, const FileAngles& angles);

/// The inverse, for a direction in the file's own axes. a: H in (-180, 180], V in [-90, 90]; b: H
/// in [-90, 90], V in (-180, 180]; c: C in [0, 360), gamma in [0, 180]. At a pole the angle about
/// it is 0.
FileAngles file_angles(Goniometer goniometer, const Direction& d);

/// For files, tables and people.
struct GoniometerWord {
    Goniometer goniometer;
    std::string_view word;       ///< "A"
    std::string_view horizontal; ///< what the first angle is called
    std::string_view vertical;
};
inline constexpr std::array goniometer_words = {
    GoniometerWord{Goniometer::a, "A", "H", "V"},
    GoniometerWord{Goniometer::b, "B", "H", "V"},
    GoniometerWord{Goniometer::c, "C", "C", "gamma"},
};

} // namespace glim
