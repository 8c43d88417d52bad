#include "specimens/look_at.h"

#include <filesystem>
#include <fstream>

namespace glim::test {

std::string look_at(const std::string& name, const Drawing& drawing)
{
    const std::filesystem::path folder = std::filesystem::path(GLIM_BINARY_DIR) / "looked-at";
    std::filesystem::create_directories(folder);
    const std::string svg = svg_of(drawing);
    std::ofstream(folder / (name + ".svg"), std::ios::binary) << svg;
    std::ofstream(folder / (name + ".png"), std::ios::binary) << png_of(drawing);
    return svg;
}

} // namespace glim::test
