#pragma once

#include "geometry/mesh_health.h"
#include "words/text_block.h"

#include <array>
#include <string_view>
#include <vector>

namespace glim {

/// A count of a mesh's health, and how people are told of it.
struct HealthWord {
    std::size_t MeshHealth::*count;
    std::string_view label;
    std::string_view says; ///< right after the count; may be empty
};
inline constexpr std::array health_words = {
    HealthWord{&MeshHealth::facets, "facets", ""},
    HealthWord{&MeshHealth::points, "points", " after welding equal ones"},
    HealthWord{&MeshHealth::components, "components", ", connected over shared corners"},
    HealthWord{&MeshHealth::degenerate, "degenerate", " facets without area"},
    HealthWord{&MeshHealth::duplicate, "duplicate", " facets beyond the first on the same corners"},
    HealthWord{&MeshHealth::boundary_edges, "open edges", " used by one facet"},
    HealthWord{&MeshHealth::non_manifold_edges, "crowded edges", " used by three facets or more"},
    HealthWord{&MeshHealth::winding_conflicts, "winding",
               " edges whose two facets face opposite ways"},
};

/// "open edges   34 used by one facet" and so on.
std::vector<Labelled> health_entries(const MeshHealth& health);

} // namespace glim
