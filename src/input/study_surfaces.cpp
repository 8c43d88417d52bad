#include "input/study_surfaces.h"

#include "input/read_chord.h"
#include "input/read_reshape.h"
#include "input/read_selection.h"
#include "input/rest_surfaces.h"
#include "input/study_section.h"
#include "input/trim_lit_faces.h"

namespace glim {

namespace {

struct OrientWord {
    Orient orient;
    std::string_view word;
};
constexpr std::array orient_words = {
    OrientWord{Orient::as_is, "as-is"},
    OrientWord{Orient::flip, "flip"},
    OrientWord{Orient::outward, "outward"},
};

void read_name(TableReader& table, SurfaceDraft& draft, NameBook& names)
{
    draft.surface.name = names.read_name(table);
    for (const auto& [prefix, meaning] :
         {std::pair(rest_prefix, "the surface of facets that nobody selects"),
          std::pair(lit_part_prefix, "the trimmed part of a lamp's lit surfaces")})
        if (draft.surface.name.starts_with(prefix))
            table.complain("name",
                           "`" + draft.surface.name + "` begins like " + std::string(meaning),
                           "choose a name that does not begin with `" + std::string(prefix) + "`");
}

void read_mesh_name(TableReader& table, SurfaceDraft& draft, const NameBook& mesh_names)
{
    table.demand("mesh", "name the [[mesh]] whose facets it takes");
    if (const std::optional<std::string> mesh = table.text("mesh"))
        draft.mesh = mesh_names.find({*mesh, table.place_of("mesh")}, table.complaints());
}

void read_select(TableReader& table, SurfaceDraft& draft)
{
    const std::size_t complaints_before = table.complaints().size();
    draft.selection = read_selection(table);
    // What is half read would select too much, and be complained of at every other surface.
    if (table.complaints().size() > complaints_before)
        draft.mesh.reset();
}

void read_orient(TableReader& table, SurfaceDraft& draft)
{
    draft.orient_place = table.place_of("orient");
    const OrientWord* row = table.row_of("orient", orient_words, &OrientWord::word);
    draft.orient = row ? row->orient : Orient::unsaid;
    if (draft.orient == Orient::outward && draft.role_known && draft.surface.role != Role::emitting)
        table.complain("orient",
                       "only an emitting surface has an outward side: " + table.words() +
                           " belongs to no lamp",
                       "write \"flip\" or \"as-is\"");
}

/// Which way lit facets look is told by the mesh as drawn; a lens that changes is another lens.
void read_shape(TableReader& table, SurfaceDraft& draft)
{
    draft.reshaped = read_reshaped(table);
    if (table.has("reshaped") && draft.role_known && draft.surface.role == Role::emitting)
        table.complain("reshaped", table.words() + " emits, and lit surfaces are not reshaped",
                       "give the new lens a [[mesh]] and a [[surface]] of its own");
}

void read_mirror(TableReader& table, SurfaceDraft& draft, bool half_model)
{
    if (half_model)
        table.demand("mirror", "the other half is never guessed; write \"yes\" for a twin on the "
                               "other side, \"no\" for what exists once, \"straddles\" for what is "
                               "drawn whole");
    const MirrorWord* row = table.row_of("mirror", mirror_words, &MirrorWord::word);
    draft.surface.mirror = row ? row->rule : MirrorRule::no;
}

} // namespace

std::vector<SurfaceDraft> read_surfaces(TableReader& study, const std::optional<Vehicle>& vehicle,
                                        const NameBook& mesh_names, NameBook& names)
{
    const bool half_model = vehicle && vehicle->modelled_side != Side::median;
    study.demand("surface", "add a [[surface]] for each lamp's lens at least");
    std::vector<SurfaceDraft> drafts;
    for (TableReader& table : study.tables("surface", "[[surface]]")) {
        SurfaceDraft draft;
        draft.place = table.place();
        read_name(table, draft, names);
        read_mesh_name(table, draft, mesh_names);
        read_select(table, draft);
        const RoleWord* role = table.row_of("role", role_words, &RoleWord::word);
        draft.surface.role = role ? role->role : Role::opaque;
        draft.role_known = role || !table.has("role");
        read_orient(table, draft);
        read_mirror(table, draft, half_model);
        read_shape(table, draft);
        draft.clear_for = table.texts("clear_for");
        draft.chord = read_chord(table);
        if (const std::optional<std::string> lamp = table.text("moves_with"))
            draft.moves_with = Reference{*lamp, table.place_of("moves_with")};
        draft.push_place = table.place_of("push");
        draft.surface.reshape = read_reshape(table, draft.surface.role);
        finish_section(table, "surface");
        drafts.push_back(std::move(draft));
    }
    return drafts;
}

} // namespace glim
