#include "input/study_modules.h"

#include "input/name_book.h"
#include "input/study_names.h"
#include "input/study_section.h"

#include <algorithm>

namespace glim {

namespace {

/// A module as it is written.
struct ModuleDraft {
    std::string name;
    std::vector<SurfaceId> surfaces;
    std::vector<LampId> lamps;
    std::vector<Reference> modules;
    std::vector<std::uint32_t> inner; ///< places of `modules`
    Place place;
};

ModuleDraft read_module(TableReader& table, const Study& study, NameBook& names)
{
    ModuleDraft draft;
    draft.name = names.read_name(table);
    draft.surfaces = read_surfaces_named(table, "surfaces", study);
    draft.lamps = read_lamps_named(table, "lamps", study);
    draft.modules = table.texts("modules");
    draft.place = table.place();
    finish_section(table, "module");
    if (!table.has("surfaces") && !table.has("lamps") && !table.has("modules"))
        table.complaints().add(draft.place, table.words() + " holds nothing",
                               "name its surfaces, lamps or modules");
    return draft;
}

/// Adds up what modules hold, the inner ones first.
class Assembly {
public:
    Assembly(const std::vector<ModuleDraft>& drafts, const Study& study)
        : drafts_(drafts), study_(study), open_(drafts.size()), modules_(drafts.size())
    {
    }

    /// Nothing where it holds itself.
    const Module* assemble(std::uint32_t place)
    {
        if (modules_[place])
            return &*modules_[place];
        if (open_[place])
            return nullptr;
        open_[place] = true;
        const ModuleDraft& draft = drafts_[place];
        std::vector<SurfaceId> surfaces = draft.surfaces;
        int level = 1;
        for (const std::uint32_t i : draft.inner) {
            const Module* inner = assemble(i);
            if (inner == nullptr)
                return nullptr;
            surfaces.insert(surfaces.end(), inner->bodies.surfaces.begin(),
                            inner->bodies.surfaces.end());
            level = std::max(level, inner->level + 1);
        }
        modules_[place] = {draft.name, moving_bodies(study_, surfaces, draft.lamps), level};
        return &*modules_[place];
    }

private:
    const std::vector<ModuleDraft>& drafts_;
    const Study& study_;
    std::vector<bool> open_;
    std::vector<std::optional<Module>> modules_;
};

} // namespace

std::vector<Module> read_modules(TableReader& top, const Study& study)
{
    std::vector<ModuleDraft> drafts;
    NameBook names("module");
    for (TableReader& table : top.tables("module", "[[module]]"))
        drafts.push_back(read_module(table, study, names));
    for (ModuleDraft& draft : drafts)
        draft.inner = names.find(draft.modules, top.complaints());
    std::vector<Module> modules;
    for (std::uint32_t i = 0; i < drafts.size(); ++i) {
        // A fresh assembly each, so that every module of a circle is told of.
        Assembly assembly(drafts, study);
        if (const Module* module = assembly.assemble(i)) {
            modules.push_back(*module);
            continue;
        }
        top.complaints().add(drafts[i].place,
                             "the [[module]] `" + drafts[i].name +
                                 "` holds itself, by way of its `modules`",
                             "take one `modules` of the circle away");
        modules.push_back({drafts[i].name, {}, 1});
    }
    return modules;
}

} // namespace glim
