#pragma once

#include "visibility/prepared_scene.h"

#include <filesystem>

namespace glim::shapes {

/// A scene that was saved (shapes/saved_scene.h), as the program reads it.
struct ReadScene {
    Study study;
    LampStanding lamp;
    std::vector<Bearing> bearings;
    std::vector<Direction> directions; ///< of the bearings
};

/// Throws InputError where it is no study, and std::runtime_error where it asks no row "asked".
ReadScene read_scene(const std::filesystem::path& folder);

} // namespace glim::shapes
