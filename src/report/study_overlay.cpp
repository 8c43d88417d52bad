#include "report/study_overlay.h"

#include "report/toml_text.h"
#include "words/numbers.h"

namespace glim {

namespace {

/// With `/` on every system. A folder on another drive, where there are drives, has no path from
/// here: then the whole path.
std::string path_from(const std::filesystem::path& folder, const std::filesystem::path& file)
{
    // Absolute first: what is not there yet has no canonical path while it is a relative one.
    const auto whole = [](const std::filesystem::path& path) {
        return std::filesystem::weakly_canonical(std::filesystem::absolute(path));
    };
    return whole(file).lexically_proximate(whole(folder)).generic_string();
}

std::string table_text(const OverlayTable& table)
{
    std::string text =
        table.in_list ? "\n[[" + table.section + "]]\n" : "\n[" + table.section + "]\n";
    for (const auto& [key, value] : table.keys)
        text += key + " = " + value + "\n";
    return text;
}

/// "+z": vehicles have their axes along those of their meshes.
std::string axis_word(const Direction& d)
{
    Eigen::Index axis = 0;
    d.vector().cwiseAbs().maxCoeff(&axis);
    return std::string(d.vector()[axis] < 0 ? "-" : "+") + "xyz"[axis];
}

} // namespace

std::string overlay_text(const StudyOverlay& overlay, const std::filesystem::path& folder)
{
    std::string text;
    for (const std::string& line : overlay.about)
        text += "# " + line + "\n";
    text += (text.empty() ? "" : "\n") + std::string("format = 1\nbase = ") +
            toml_text(path_from(folder, overlay.base)) + "\ntitle = " + toml_text(overlay.title) +
            "\n";
    for (const OverlayTable& table : overlay.tables)
        text += table_text(table);
    return text;
}

OverlayTable vehicle_mesh(const std::string& name, const std::string& file, const Vehicle& vehicle)
{
    return {"mesh",
            true,
            {{"name", toml_text(name)},
             {"file", toml_text(file)},
             {"unit", toml_text("mm")},
             {"up", toml_text(axis_word(vehicle.up))},
             {"forward", toml_text(axis_word(vehicle.forward))}}};
}

OverlayTable reshaped_surface(const Surface& drawn, const std::string& file)
{
    return {"surface",
            true,
            {{"name", toml_text(drawn.name)},
             {"reshaped", toml_text(file)},
             {"chord", shortest(in_mm(drawn.chord.error))}}};
}

} // namespace glim
