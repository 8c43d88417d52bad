#pragma once

#include <array>
#include <cstdint>
#include <vector>

namespace glim {

/// A point of an integer grid.
using GridPoint = std::array<std::int64_t, 2>;
/// A closed line of straight edges; the last point leads back to the first.
using GridLoop = std::vector<GridPoint>;

/// Loops that together go round every place as often, and in the same sense, as these do: what two
/// go along in opposite senses is left out, so that the facets of a mesh become its rim.
std::vector<GridLoop> without_shared_edges(const std::vector<GridLoop>& loops);

} // namespace glim
