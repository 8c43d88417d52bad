#pragma once

#include "judgement/apparent_surface.h"
#include "model/vehicle.h"

#include <optional>

namespace glim {

/// Where the apparent surface of a lamp stands: its lit facets that face its reference axis, seen
/// along it, with nothing in the way. Points are in the vehicle frame; each is a corner of a facet
/// (of equally far ones the first in the mesh) but for the centroid.
struct LampPlace {
    Point lowest, highest; ///< over the ground given
    /// Farthest out from the median plane, and least far, on the side of the lamp.
    Point outermost, innermost;
    Length least_height, most_height; ///< over the ground; negative below it
    /// Centroid of the facets, each weighed by its area as seen along the axis. Where folds lie
    /// behind each other along the axis, both weigh.
    Point centroid;
    /// The side as seated on which the centroid stands; left within `on_median_plane` of the plane.
    Side side = Side::left;
    /// How far out from the median plane on `side`. The inner one is negative where the lamp
    /// reaches over to the other side: a lamp 100 mm wide on the plane itself has 50 and -50.
    Length from_median_outermost, from_median_innermost;
    Area on_axis; ///< as seen along the axis; folds behind each other both count
};

/// Rounding may put the centroid of a lamp that is drawn evenly about the median plane to either
/// side, by far less than this.
inline constexpr Length on_median_plane = millimetres(1e-6);

/// Nothing if no lit facet faces the axis. `axis` points from the lamp towards the eye.
std::optional<LampPlace> place_of(const TriangleMesh& lit, const Direction& axis,
                                  const Vehicle& vehicle, const Ground& ground);

/// The distance between the inner edges of two lamps on opposite sides, across the vehicle; which
/// of the two is given first does not matter. Negative where they reach past each other.
/// Requires: both are measured on the same vehicle.
Length between_inner_edges(const LampPlace& left, const LampPlace& right);

} // namespace glim
