#pragma once

#include "units/units.h"

#include <filesystem>
#include <optional>
#include <string>
#include <variant>

namespace glim {

// What somebody can ask of the program on its command line, one struct a command.

struct CheckRequest {
    std::filesystem::path study;
    std::optional<std::filesystem::path> out; ///< without it nothing is written
    std::optional<Angle> step;                ///< in place of the study's own
    unsigned threads = 0;                     ///< 0: all cores
    bool json = false;
    bool quiet = false;
};

struct InspectRequest {
    std::filesystem::path file;
    bool json = false;
};

struct NewRequest {
    std::filesystem::path mesh;
    std::optional<std::filesystem::path> out; ///< else beside the mesh, as a .toml; "-": to the
                                              ///< standard output
    bool force = false;
};

struct TablesRequest {
    std::optional<std::string> table; ///< a name or a file; else all that come with the program
    bool json = false;
};

/// Help or the version: what to print is all there is.
struct TextRequest {
    std::string text;
};

using Request = std::variant<CheckRequest, InspectRequest, NewRequest, TablesRequest, TextRequest>;

} // namespace glim
