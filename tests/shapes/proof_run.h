#pragma once

#include "machine/workers.h"
#include "shapes/random_scene.h"

#include <filesystem>
#include <string>

namespace glim::shapes {

struct ProofRun {
    std::uint64_t first_seed = 1;
    std::size_t scenes = 300;       ///< seeds in a row
    std::filesystem::path failures; ///< where shrunk failures are saved, a folder a seed
    Workers workers;
};

struct ProofResult {
    std::size_t scenes = 0;
    std::size_t directions = 0;
    std::size_t hidden = 0; ///< directions in which something hides some of the lamp
    Area worst_difference;  ///< between exact area and definition
    /// The greatest difference as a share of the rounding that was stated with it.
    double worst_share = 0;
    /// How far low and high lie apart, as a share of the lens: the mean of all directions. Bounds
    /// that hold and tell nothing would be no proof.
    double mean_width = 0;
    std::vector<std::string> failures; ///< by seed: what broke, and where the shrunk scene is
};

/// Holds the program against the definition in every scene and direction; what fails is shrunk and
/// saved. The same for any number of threads. Throws Stopped if it was stopped.
ProofResult prove(const ProofRun& run);

} // namespace glim::shapes
