#pragma once

#include "model/study.h"

#include <string>
#include <vector>

namespace glim {

/// What results tell beside the findings. Nothing in it depends on the day, the machine, the number
/// of threads or the folder the program was started in.
struct RunFacts {
    std::string program_version;
    std::string command; ///< what to type in the study's folder to get the same results
    std::string study;   ///< the study's file name, without its folder
    std::vector<std::string> ground_states; ///< of load, for which the study knows the ground
    std::vector<MeshSource> meshes;
    std::vector<SourceFile> files; ///< everything that was read, with its digest
    std::vector<Warning> warnings; ///< places counted from the study's folder
    /// What the user named: the study, its files, meshes, surfaces, lamps, checks and own tables.
    std::vector<std::string> names;
};

/// `command` without options that change no result (`--threads`, `--out`).
RunFacts run_facts(const Study& study, std::string program_version, std::string command);

} // namespace glim
