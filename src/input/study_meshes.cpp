#include "input/study_meshes.h"

#include "geometry/likely_unit.h"
#include "input/axis_words.h"
#include "input/read_chord.h"
#include "input/read_mesh.h"
#include "input/study_section.h"
#include "input/text_file.h"

#include <system_error>

namespace glim {

namespace {

std::optional<MeshFile> read_file(TableReader& table, const std::string& file)
{
    const std::filesystem::path path = table.folder_of("file") / file;
    std::error_code trouble;
    if (!std::filesystem::exists(path, trouble)) {
        table.complain("file", "there is no file `" + path.string() + "`",
                       remedy_for_missing(path));
        return std::nullopt;
    }
    try {
        return read_mesh(path, path.string());
    } catch (const InputError& error) {
        table.complaints().add(error);
        return std::nullopt;
    }
}

/// The file as a study in `home` would write it; a base elsewhere wrote it from its own `folder`.
std::string file_from(const std::filesystem::path& home, const std::filesystem::path& folder,
                      const std::string& written)
{
    return home == folder ? written : (folder / written).lexically_proximate(home).string();
}

/// The unit is required; what is likely is told only to help whoever writes it.
const MeshUnit* read_unit(TableReader& table, const std::optional<MeshFile>& file)
{
    std::string hint =
        "the unit is never guessed; write \"mm\", \"cm\", \"m\", \"inch\" or \"foot\"";
    if (file)
        hint += "; " + likely_unit_words(box_of(file->mesh));
    table.demand("unit", hint);
    return table.row_of("unit", mesh_units, &MeshUnit::word);
}

NamedMesh placed_in_vehicle(MeshFile file, const MeshUnit& unit, const FrameAxes& axes,
                            const Vehicle& vehicle)
{
    const FrameAxes target{vehicle.forward, vehicle.up, {}, {}};
    const Placement vehicle_from_file = Placement::axes(target.columns(), axes.columns());
    for (Point& p : file.mesh.points)
        p *= in_mm(unit.one);
    return {placed(file.mesh, vehicle_from_file), std::move(file.parts),
            std::move(file.part_of_facet)};
}

/// What the file holds and the scene does not, or not as drawn.
std::vector<Warning> losses_of(const MeshFile& file, const std::string& name, const Place& place)
{
    std::vector<Warning> losses;
    if (file.curved_surfaces > 0)
        losses.push_back({place,
                          "mesh `" + name + "` has " + std::to_string(file.curved_surfaces) +
                              " free-form surfaces that are not read: what they hide is missing",
                          "write them out as triangles"});
    if (file.crossed_polygons > 0)
        losses.push_back({place,
                          "mesh `" + name + "` has " + std::to_string(file.crossed_polygons) +
                              " polygons that cross themselves; they are cut into fans",
                          "look at them where they matter, or write them out as triangles"});
    return losses;
}

MeshDraft read_one(TableReader& table, const std::optional<Vehicle>& vehicle,
                   const std::filesystem::path& home, NameBook& names)
{
    MeshDraft draft;
    draft.place = table.place();
    draft.source.name = names.read_name(table);
    table.demand("file", "write the file's path, from the folder of the study");
    const std::optional<std::string> path = table.text("file");
    std::optional<MeshFile> file = path ? read_file(table, *path) : std::nullopt;
    const MeshUnit* unit = read_unit(table, file);
    const std::optional<FrameAxes> axes = read_axes(table);
    const std::optional<Length> chord = read_chord(table);
    finish_section(table, "mesh");
    if (!file || !unit || !axes || !vehicle)
        return draft;
    draft.source.file = file_from(home, table.folder_of("file"), *path);
    draft.source.is = file->is;
    draft.source.unit = unit->word;
    draft.source.up = axes->up_word;
    draft.source.forward = axes->forward_word;
    draft.source.health = health_of(file->mesh);
    draft.warnings = losses_of(*file, draft.source.name, draft.place);
    draft.placed = placed_in_vehicle(std::move(*file), *unit, *axes, *vehicle);
    draft.source.chord = chord_of(draft.placed->mesh, chord);
    return draft;
}

} // namespace

std::vector<MeshDraft> read_meshes(TableReader& study, const std::optional<Vehicle>& vehicle,
                                   NameBook& names)
{
    study.demand("mesh", "add a [[mesh]] with its name, file, unit, up and forward");
    const std::filesystem::path home = std::filesystem::path(study.place().file).parent_path();
    std::vector<MeshDraft> drafts;
    for (TableReader& table : study.tables("mesh", "[[mesh]]"))
        drafts.push_back(read_one(table, vehicle, home, names));
    return drafts;
}

} // namespace glim
