#pragma once

#include "judgement/apparent_surface.h"
#include "model/vehicle.h"

#include <optional>

namespace glim {

/// The shortest way between two lamps, as projected on the transverse vertical plane of the
/// vehicle: perpendicular to `forward` laid level, that is, at right angles to the vehicle's own
/// up. How far one stands ahead of the other does not count.
struct GapBetween {
    Length distance; ///< in that plane; 0 where the projections touch or overlap
    Point from, to;  ///< on the lit facets themselves, vehicle frame
};

/// Between the edges of the apparent surfaces of two lamps, each that of its own reference axis.
/// Nothing if one of them has no facet that faces its axis. Requires: forward is not vertical.
std::optional<GapBetween> edge_to_edge(const TriangleMesh& lit_a, const Direction& axis_a,
                                       const TriangleMesh& lit_b, const Direction& axis_b,
                                       const Vehicle& vehicle);

/// From the centroid of the apparent surface of the first lamp, as in LampPlace, to the edge of the
/// second one's: 0 where the centroid lies within. `from` is the centroid.
std::optional<GapBetween> centroid_to_edge(const TriangleMesh& lit_a, const Direction& axis_a,
                                           const TriangleMesh& lit_b, const Direction& axis_b,
                                           const Vehicle& vehicle);

} // namespace glim
