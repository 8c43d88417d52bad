#pragma once

#include "drawing/level_set.h"

namespace glim {

/// Outlines of the parts of the field that are nearest to some of its nodes: borders run halfway
/// between nodes. `chosen` has one a node. Counter-clockwise, holes clockwise.
std::vector<BearingLine> outline_of_nodes(const FieldGrid& grid, const std::vector<bool>& chosen);

/// Nodes that hang together and are of one kind.
struct NodePatch {
    std::size_t kind = 0;
    Bearing middle; ///< as far from its rim as any of its nodes
    int depth = 0;  ///< in nodes, from there to the rim
};

/// Patches of neighbours along the grid with the same kind, by V then H of their first node.
std::vector<NodePatch> patches_of(const FieldGrid& grid,
                                  const std::vector<std::optional<std::size_t>>& kinds);

} // namespace glim
