#pragma once

#include "input/read_study.h"

#include <filesystem>
#include <stdexcept>
#include <string>

namespace glim::demo {

/// `letter` as in meshes/demo/theme-a.toml.
inline Study theme(const std::string& letter)
{
    return read_study(std::filesystem::path(GLIM_SOURCE_DIR) / "meshes" / "demo" /
                      ("theme-" + letter + ".toml"));
}

inline const Surface& surface(const Study& study, const std::string& name)
{
    for (const Surface& s : study.surfaces)
        if (s.name == name)
            return s;
    throw std::runtime_error("no surface " + name);
}

} // namespace glim::demo
