#pragma once

#include "judgement/apparent_surface.h"

namespace glim {

/// Pieces of a lit surface that are no farther apart than this, as seen along the axis, are one:
/// faces that a modeller drew edge to edge, but cut into facets one by one, may leave such a slit.
inline constexpr Length touching_parts = millimetres(0.05);

/// One lamp made of parts: the connected pieces of its apparent surface, seen along the axis.
/// Connected over shared corners, or by touching or lying over each other as seen along the axis.
struct PartsOfLamp {
    std::size_t parts = 0; ///< 0 if no lit facet faces the axis
    /// What the parts fill, as seen along the axis, of the smallest quadrilateral around them all:
    /// 0 to 1; what lies over each other counts once. 0 without parts. Where the outline has more
    /// than most_exact_corners corners, the quadrilateral, and so the share, is that of a simpler
    /// outline around it: the share may be too small then, by some tenths of a per mille.
    double share_of_quadrilateral = 0;
    /// The longest of the gaps that must be bridged to join all parts, where always the shortest
    /// are bridged first; 0 for one part.
    Length widest_gap;
};

/// `axis` points from the lamp towards the eye.
PartsOfLamp parts_of_lamp(const TriangleMesh& lit, const Direction& axis);

} // namespace glim
