#pragma once

#include "model/criterion.h"
#include "remedy/keep_clear_bodies.h"

#include <stop_token>

namespace glim {

/// What a row wants to be seen of a lamp in every direction; nothing where it asks for no space.
std::optional<PartNeeded> part_needed(const Criterion& criterion);

struct PartAsked {
    const Field& field;
    const PartNeeded& needed;
};

/// Which part of a lamp is kept in view.
struct PartChoice {
    KeptParts kept;
    bool whole = false; ///< all of it is needed
    /// Where the tool chose: about how large the space is for each edge, in the order of
    /// FavouredEdge.
    std::vector<Volume> by_edge = {};
};

/// The part along the edge that the wish favours, or the one whose space within `reach` is
/// smallest. `lit`: level frame. Throws Stopped.
PartChoice chosen_part(const TriangleMesh& lit, const PartAsked& asked, const KeepClearWish& wish,
                       const SpaceReach& reach, const std::stop_token& stop);

} // namespace glim
