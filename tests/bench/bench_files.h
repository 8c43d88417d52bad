#pragma once

#include "bench/figures.h"

#include <array>
#include <filesystem>
#include <string_view>

namespace glim::bench {

/// A study of one check, by what is asked of it.
struct BenchStudy {
    std::string_view what; ///< for people
    std::string_view file;
    std::string_view rule;    ///< in the table of the bench
    std::string_view certify; ///< as in [sampling]
    bool between;             ///< whether it looks between the directions of the grid too
    std::string_view target;  ///< for the time of a whole run at 1M triangles with two threads
};
inline constexpr std::array bench_studies = {
    BenchStudy{"area, certified nowhere", "area.toml", "area", "nowhere", false, "at most 2"},
    BenchStudy{"area, certified everywhere", "sure.toml", "area", "everywhere", false, "at most 5"},
    BenchStudy{"area, as by default", "default.toml", "area", "coarse", true, ""},
    BenchStudy{"no obstacle", "clear.toml", "clear", "coarse", true, "at most 8"},
};

/// The files of one size of body, in a folder.
struct BenchFiles {
    std::filesystem::path obj, stl; ///< the whole body
    std::filesystem::path lens;     ///< OBJ
    std::filesystem::path table;    ///< the rules

    std::filesystem::path of(const BenchStudy& study) const
    {
        return table.parent_path() / study.file;
    }
    std::filesystem::path area_study() const { return of(bench_studies.front()); }
    /// As by default, asked of two lamps that share the lens.
    std::filesystem::path two_lamps_study() const { return table.parent_path() / "two-lamps.toml"; }
};

BenchFiles bench_files_in(const std::filesystem::path& folder);

/// Writes them: the body as OBJ (a group a part) and as binary STL, the lens as OBJ, a rule table
/// and the studies, whose surfaces are the 20 parts. They look every `step_deg` degrees over
/// -45..80 by +-15, with a pitch of 1.6 mm. Gives how large the files are.
std::vector<Figure> write_bench_files(std::size_t triangles, int step_deg, const BenchFiles& files);

} // namespace glim::bench
