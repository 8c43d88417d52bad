#pragma once

#include "machine/workers.h"
#include "remedy/keep_clear_set.h"

namespace glim {

/// A keep-clear set as a closed, consistently wound mesh that holds it.
struct KeepClearBody {
    TriangleMesh mesh; ///< level frame
    Volume volume;
    /// Of all places looked at on it (every corner, the middle of every edge and facet above and
    /// below) none lies farther from the set; none where some do, because triangles ran out.
    std::optional<Length> within;
};

/// A mesh around `set` over the places `within`, none of it farther from the set than
/// `chord_error`.
///
/// The plan is cut into triangles that are halved until the heights over them fit. Each triangle
/// has heights that hold the set over all of it (SightSheaf::raise), each corner takes the highest
/// of its triangles above and the lowest below: so the body is never too small, by construction,
/// and closed, because below, above and walls share the plan's triangles. Requires: between the
/// set's lowest and highest point over any place there is no gap wider than the chord error. Throws
/// Stopped.
KeepClearBody keep_clear_body(const KeepClearSet& set, const ConvexPolygon& within,
                              Length chord_error, const Workers& workers);

} // namespace glim
