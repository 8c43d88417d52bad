#pragma once

#include "model/complaint.h"
#include "model/costs.h"

#include <filesystem>

namespace glim {

/// A variant to compare: [[option]] of a study.
struct Option {
    std::string name;            ///< unique among the options
    std::filesystem::path study; ///< a study, or a folder with a study.toml; as it can be opened
    CostFigures costs;
    /// What is not named costs nothing; else it is not known.
    bool others_cost_nothing = false;
    Place study_place = {}; ///< where `study` is written
};

} // namespace glim
