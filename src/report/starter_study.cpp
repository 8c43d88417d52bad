#include "report/starter_study.h"

#include "geometry/likely_unit.h"
#include "report/toml_text.h"

#include <array>
#include <filesystem>
#include <set>
#include <string_view>

namespace glim {

namespace {

constexpr std::string_view opening =
    R"(# A first study. Lines marked FILL IN wait for what only you can know; nothing is
# guessed. docs/study-file.md explains every key. When all is filled in, run
#     cornerglim check STUDY
format = 1
)";

constexpr std::string_view vehicle_and_ground = R"(
[vehicle]
forward = "" # FILL IN the axis that points forward: "+x", "-x", "+y", "-y", "+z" or "-z"
up = "" # FILL IN the axis that points up
modelled_side = "" # FILL IN "left" or "right" if only one half is drawn, else "both"
# overall_width = 1850 # mm, as the regulation counts it; some rules ask for it

[ground.FILL-IN] # FILL IN the state of load the drawing shows: unladen, curb or design
height = "" # FILL IN where the ground is along the axis that points up, in mm, as a bare number
)";

constexpr std::string_view axes_of_mesh =
    "up = \"\" # FILL IN the axis of this file that points up\n"
    "forward = \"\" # FILL IN the axis of this file that points forward\n";

constexpr std::string_view about_surfaces = R"(
# What the parts are. role: "emitting" for a lit face, "opaque", "clear" for what
# light passes, "ignored". mirror, for a half model: "yes" if the part has a twin on
# the other side, "no" if it exists once, "straddles" if it is drawn across the middle;
# for a whole body take the mirror lines away. Parts that no surface takes are opaque.
)";

constexpr std::string_view lamp_and_check = R"(
[[lamp]]
name = "indicator"
function = "" # FILL IN what it signals: "front_indicator", "front_position", "stop" ...
side = "" # FILL IN "left", "right" or "median", as seated
# pair = true # if a mirror image stands on the other side
emits = [""] # FILL IN the names of its lit surfaces; their role is "emitting"

[[check]]
name = "across the nose"
table = "own-example" # or another: cornerglim tables
rule = "across-45"
lamp = "indicator"
)";

std::string mesh_section(const MeshFile& mesh, const std::string& name, const std::string& file)
{
    return "\n[[mesh]]\nname = " + toml_text(name) + "\nfile = " + toml_text(file) +
           "\nunit = \"\" # FILL IN \"mm\", \"cm\", \"m\", \"inch\" or \"foot\"; " +
           likely_unit_words(box_of(mesh.mesh)) + "\n" + std::string(axes_of_mesh);
}

struct NamedColumn {
    std::string_view key;
    std::string MeshPart::*name;
};
constexpr std::array columns = {
    NamedColumn{"object", &MeshPart::object},
    NamedColumn{"group", &MeshPart::group},
    NamedColumn{"material", &MeshPart::material},
};

/// Empty for a part without a name, which a pattern cannot choose.
std::string selection_of(const MeshPart& part)
{
    std::string keys;
    for (const NamedColumn& column : columns)
        if (!(part.*column.name).empty())
            keys += (keys.empty() ? "" : ", ") + std::string(column.key) + " = " +
                    toml_text(part.*column.name);
    return keys;
}

/// The first name the part has, numbered if it is taken.
std::string free_name(const MeshPart& part, std::set<std::string>& taken)
{
    std::string name;
    for (const NamedColumn& column : columns)
        if (name.empty())
            name = part.*column.name;
    std::string candidate = name;
    for (int number = 2; !taken.insert(candidate).second; ++number)
        candidate = name + " " + std::to_string(number);
    return candidate;
}

std::string surface_sections(const MeshFile& mesh, const std::string& mesh_name)
{
    std::string text;
    std::set<std::string> taken;
    for (const MeshPart& part : mesh.parts) {
        const std::string selection = selection_of(part);
        if (selection.empty())
            continue;
        text += "\n[[surface]]\nname = " + toml_text(free_name(part, taken)) +
                "\nmesh = " + toml_text(mesh_name) + "\nselect = { " + selection +
                " }\nrole = \"\" # FILL IN\nmirror = \"\" # FILL IN for a half model\n";
    }
    return text.empty() ? text : std::string(about_surfaces) + text;
}

} // namespace

std::string starter_study(const MeshFile& mesh, const std::string& mesh_file)
{
    const std::string name = std::filesystem::path(mesh_file).stem().string();
    return std::string(opening) + "title = " + toml_text(name) + "\n" +
           std::string(vehicle_and_ground) + mesh_section(mesh, name, mesh_file) +
           surface_sections(mesh, name) + std::string(lamp_and_check);
}

} // namespace glim
