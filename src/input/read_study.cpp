#include "input/read_study.h"

#include "input/lit_faces.h"
#include "input/plausibility.h"
#include "input/read_chord.h"
#include "input/rest_surfaces.h"
#include "input/study_added_lamp.h"
#include "input/study_checks.h"
#include "input/study_keep_clear.h"
#include "input/study_moved_lamp.h"
#include "input/study_moved_parts.h"
#include "input/study_options.h"
#include "input/study_overlay.h"
#include "input/study_relief.h"
#include "input/study_section.h"
#include "input/study_states.h"
#include "input/study_tolerances.h"
#include "input/study_vehicle.h"
#include "input/take_facets.h"
#include "input/text_file.h"
#include "input/trim_lit_faces.h"

#include <algorithm>

namespace glim {

namespace {

void read_heading(TableReader& top, Study& study)
{
    const std::string remedy = "write format = 1 at the top";
    top.demand("format", remedy);
    const std::optional<double> format = top.number("format", "");
    if (format && *format != 1)
        top.complain("format", "this program reads format 1 of study files", remedy);
    top.text("base"); // laid under this study already, if it is a file's name
    study.title = top.text("title").value_or("");
}

Sampling read_sampling(TableReader& top)
{
    Sampling sampling;
    std::optional<TableReader> table = top.table("sampling", "[sampling]");
    if (!table)
        return sampling;
    sampling.step = table->angle("step").value_or(sampling.step);
    sampling.feature = table->length("feature").value_or(sampling.feature);
    sampling.touch = table->length("touch").value_or(sampling.touch);
    sampling.hairline = table->length("hairline").value_or(sampling.hairline);
    sampling.finest = table->angle("finest").value_or(sampling.finest);
    if (const auto* row = table->row_of("certify", certify_words, &CertifyWord::word))
        sampling.certify = row->certify;
    for (const auto& [key, value] :
         {std::pair("step", in_degrees(sampling.step)),
          std::pair("feature", in_mm(sampling.feature)), std::pair("touch", in_mm(sampling.touch)),
          std::pair("hairline", in_mm(sampling.hairline)),
          std::pair("finest", in_degrees(sampling.finest))})
        if (value <= 0)
            table->complain(key, "`" + std::string(key) + "` of [sampling] is not above 0",
                            "write a positive number, or take the key away");
    finish_section(*table, "sampling");
    return sampling;
}

void keep_lamps(const std::vector<LampDraft>& drafts, Study& study)
{
    for (const LampDraft& draft : drafts) {
        const LampId lamp = study.lamps.add(draft.lamp);
        if (draft.light.light) {
            study.lights.push_back(*draft.light.light);
            study.lights.back().lamp = lamp;
        }
        study.warnings.insert(study.warnings.end(), draft.light.warnings.begin(),
                              draft.light.warnings.end());
    }
}

/// The surface's own word on its chord error counts before its mesh's.
std::optional<Length> chord_given(const SurfaceDraft& draft, const std::vector<MeshDraft>& meshes)
{
    if (draft.chord || !draft.mesh)
        return draft.chord;
    const Chord& chord = meshes[*draft.mesh].source.chord;
    return chord.estimated ? std::nullopt : std::optional(chord.error);
}

void keep_file(SourceFile file, Study& study)
{
    if (std::find(study.files.begin(), study.files.end(), file) == study.files.end())
        study.files.push_back(std::move(file));
}

/// Its name counted from the study's folder, as results tell it.
void keep_opened_file(SourceFile file, Study& study)
{
    const std::filesystem::path home = std::filesystem::path(study.file).parent_path();
    file.file = std::filesystem::path(file.file).lexically_proximate(home).generic_string();
    keep_file(std::move(file), study);
}

/// Drafts become surfaces in their order, so that places among them stay true.
void keep_surfaces(std::vector<SurfaceDraft>& drafts, const std::vector<MeshDraft>& meshes,
                   const NameBook& lamp_names, Complaints& complaints, Study& study)
{
    for (const MeshDraft& mesh : meshes)
        study.warnings.insert(study.warnings.end(), mesh.warnings.begin(), mesh.warnings.end());
    std::vector<Surface> rests = rest_surfaces(drafts, meshes, study.vehicle, study.warnings);
    for (SurfaceDraft& draft : drafts) {
        for (const std::uint32_t lamp : lamp_names.find(draft.clear_for, complaints))
            draft.surface.clear_for.push_back(LampId{lamp});
        if (draft.moves_with)
            if (const auto lamp = lamp_names.find(*draft.moves_with, complaints))
                draft.surface.moves_with = LampId{*lamp};
        if (draft.reshaped) {
            draft.surface.mesh = std::move(draft.reshaped->mesh);
            keep_opened_file(draft.reshaped->file, study);
        }
        draft.surface.chord = chord_of(draft.surface.mesh, chord_given(draft, meshes));
        study.surfaces.add(std::move(draft.surface));
    }
    for (Surface& rest : rests)
        study.surfaces.add(std::move(rest));
}

void warn_of_idle_lenses(const std::vector<SurfaceDraft>& drafts, Study& study)
{
    std::vector<bool> lit(drafts.size());
    for (const Lamp& lamp : study.lamps)
        for (const SurfaceId id : lamp.emits)
            lit[id.index] = true;
    for (std::uint32_t i = 0; i < drafts.size(); ++i)
        if (study.surfaces[SurfaceId{i}].role == Role::emitting && !lit[i])
            study.warnings.push_back({drafts[i].place,
                                      "surface `" + study.surfaces[SurfaceId{i}].name +
                                          "` emits for no lamp: it only "
                                          "stands in the way",
                                      "name it in `emits` of a [[lamp]], or give it another role"});
}

/// A file that repeats lit faces is untidy where it matters most.
void warn_of_repeated_lit_facets(const std::vector<SurfaceDraft>& drafts, Study& study)
{
    for (std::uint32_t i = 0; i < drafts.size(); ++i) {
        const Surface& surface = study.surfaces[SurfaceId{i}];
        const std::size_t repeated =
            surface.role == Role::emitting ? health_of(surface.mesh).duplicate : 0;
        if (repeated > 0)
            study.warnings.push_back({drafts[i].place,
                                      "the lit surface `" + surface.name + "` repeats " +
                                          std::to_string(repeated) +
                                          " of its facets; each of them sends light once",
                                      "look at it where it was drawn: are there two skins?"});
    }
}

void keep_files(const std::vector<LampDraft>& lamps, Study& study)
{
    for (const MeshSource& mesh : study.meshes)
        keep_file({FileUse::mesh, mesh.file, mesh.is}, study);
    for (const LampDraft& lamp : lamps) {
        if (lamp.trim_file)
            keep_opened_file(*lamp.trim_file, study);
        for (const SourceFile& file : lamp.light.files)
            keep_opened_file(file, study);
    }
}

void keep_tables(Study& study)
{
    for (const RuleTable& table : study.tables)
        if (table.source.use == FileUse::shipped_table)
            keep_file(table.source, study);
        else
            keep_opened_file(table.source, study);
}

void read_bodies(TableReader& top, const std::optional<Vehicle>& vehicle, NameBook& lamp_names,
                 Study& study)
{
    NameBook mesh_names("mesh"), surface_names("surface");
    const std::vector<MeshDraft> meshes = read_meshes(top, vehicle, mesh_names);
    std::vector<SurfaceDraft> surfaces = read_surfaces(top, vehicle, mesh_names, surface_names);
    const std::vector<LampDraft> lamps =
        read_lamps(top, vehicle, surfaces, surface_names, lamp_names);
    Complaints& complaints = top.complaints();
    if (vehicle) {
        take_facets(surfaces, meshes, *vehicle, complaints);
        orient_lit_faces(surfaces, lamps, *vehicle, complaints);
        check_lamp_sides(surfaces, lamps, *vehicle, complaints);
        check_pushes(surfaces, complaints);
    }
    for (const MeshDraft& mesh : meshes)
        study.meshes.push_back(mesh.source);
    keep_files(lamps, study);
    keep_lamps(lamps, study);
    keep_surfaces(surfaces, meshes, lamp_names, complaints, study);
    warn_of_idle_lenses(surfaces, study);
    warn_of_repeated_lit_facets(surfaces, study);
    if (vehicle && complaints.empty())
        trim_lit_faces(lamps, study, complaints);
}

} // namespace

Study read_study(const std::filesystem::path& file, WithoutChecks without_checks)
{
    const StudyText text = read_study_text(file);
    Complaints complaints;
    TableReader top(text.table, "the study", complaints);

    Study study;
    study.file = file.string();
    for (const SourceFile& written_in : text.files)
        keep_opened_file(written_in, study);
    read_heading(top, study);
    const std::optional<Vehicle> vehicle = read_vehicle(top);
    study.vehicle = vehicle.value_or(Vehicle{});
    study.grounds = read_grounds(top, vehicle);
    const std::vector<GroundState> states = read_states(top, study, vehicle);
    study.grounds.insert(study.grounds.end(), states.begin(), states.end());
    NameBook lamp_names("lamp");
    read_bodies(top, vehicle, lamp_names, study);
    if (without_checks == WithoutChecks::refused)
        demand_checks(top);
    read_checks(top, vehicle, lamp_names, study);
    study.add_lamp = read_add_lamp(top, study);
    study.move_lamp = read_move_lamp(top, study);
    study.variation.tolerances = read_tolerances(top, study);
    study.variation.task = read_tolerance_task(top, study, study.variation.tolerances);
    study.moved_parts = read_moved_parts(top, study);
    study.options = read_options(top);
    study.costs = read_costs(top);
    keep_tables(study);
    study.sampling = read_sampling(top);
    study.relief = read_relief(top, study.checks);
    study.keep_clear = read_keep_clear(top, study);
    finish_section(top, "");

    complaints.sort_by_place();
    complaints.throw_if_any();
    for (const Warning& doubt : doubts_about(study, Place{study.file, 0, 0, {}}))
        study.warnings.push_back(doubt);
    return study;
}

} // namespace glim
