#pragma once

#include "bench/figures.h"

#include <filesystem>

namespace glim::bench {

/// The files of one size of body, in a folder.
struct BenchFiles {
    std::filesystem::path obj, stl; ///< the whole body
    std::filesystem::path lens;     ///< OBJ
    std::filesystem::path table;    ///< the rule
    std::filesystem::path study;    ///< one check: an area over the field
};

BenchFiles bench_files_in(const std::filesystem::path& folder);

/// Writes them: the body as OBJ (a group a part) and as binary STL, the lens as OBJ, a rule table
/// and a study whose surfaces are the 20 parts. Looks every `step_deg` degrees over -45..80 by
/// +-15, with a pitch of 1.6 mm. Gives how large they are.
std::vector<Figure> write_bench_files(std::size_t triangles, int step_deg, const BenchFiles& files);

} // namespace glim::bench
