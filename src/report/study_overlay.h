#pragma once

#include "model/surface.h"
#include "model/vehicle.h"

#include <filesystem>
#include <string>
#include <utility>
#include <vector>

namespace glim {

/// A key and its value as TOML writes it (see toml_text.h).
using TomlKey = std::pair<std::string, std::string>;

/// One table of a study: "surface" and what stands in it, in the order in which it is written.
struct OverlayTable {
    std::string section;
    bool in_list = true; ///< "[[surface]]"; else "[relief]"
    std::vector<TomlKey> keys;
};

/// A study that changes another one and is read like any other: what a remedy leaves for `check`.
struct StudyOverlay {
    std::filesystem::path base; ///< the study below it, as the program can open it
    std::string title;
    std::vector<std::string> about = {}; ///< lines of comment at its head
    std::vector<OverlayTable> tables = {};
};

/// The overlay as TOML text, to stand in `folder`, from where its base is named. Keys that a
/// remedy's own sections give the base are not repeated: the base still has them.
std::string overlay_text(const StudyOverlay& overlay, const std::filesystem::path& folder);

/// [[mesh]]: `file` in mm, with the axes of the vehicle.
OverlayTable vehicle_mesh(const std::string& name, const std::string& file, const Vehicle& vehicle);

/// [[surface]] with another shape: the facets of `file` stand in the place of those it takes, and
/// lie as near to the surface that they stand for as those did. (Estimated anew, the bends of a
/// relief would count as errors of its mesh.)
OverlayTable reshaped_surface(const Surface& drawn, const std::string& file);

} // namespace glim
