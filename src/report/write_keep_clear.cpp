#include "report/write_keep_clear.h"

#include "drawing/colour_ramp.h"
#include "drawing/intrusion_map.h"
#include "report/file_names.h"
#include "report/html_page.h"
#include "report/keep_clear_json.h"
#include "report/mesh_files.h"
#include "report/pdf_pages.h"
#include "report/typeset_document.h"
#include "words/capitalised.h"
#include "words/keep_clear_words.h"
#include "words/origin_words.h"

namespace glim {

namespace {

std::string name_of(const Intrusion& intrusion, const Study& study)
{
    return study.surfaces[intrusion.surface.surface].name +
           (intrusion.surface.twin ? " (mirrored)" : "");
}

std::string painted_ply(const Intrusion& intrusion)
{
    PointFigures painted{"depth_mm", {}, {}};
    for (const Length depth : intrusion.depths) {
        painted.figures.push_back(in_mm(depth));
        painted.colours.push_back(ramp_colour(depth / intrusion.depth));
    }
    return ply_of(intrusion.mesh, painted,
                  "cornerglim: depth inside a keep-clear space; mm, vehicle frame");
}

void add_space(const KeepClearSpace& space, const Study& study, std::vector<Block>& blocks)
{
    blocks.push_back(Heading{1, space_label(space)});
    Terms terms;
    for (const Labelled& entry : space_entries(space))
        terms.terms.push_back({entry.label, {entry.text}});
    blocks.push_back(std::move(terms));
    if (space.intrusions.empty()) {
        blocks.push_back(Paragraph{"Nothing of the study reaches into it.", Tone::met, false});
        return;
    }
    BulletList list;
    Figures figures;
    for (const Intrusion& intrusion : space.intrusions) {
        list.items.push_back(intrusion_words(intrusion, study));
        figures.figures.push_back(
            intrusion_map(intrusion, name_of(intrusion, study), study.vehicle));
    }
    blocks.push_back(Paragraph{space.spared ? "Reaching into it, which another way makes up for:"
                                            : "Reaching into it:",
                               space.spared ? Tone::plain : Tone::not_met, false});
    blocks.push_back(std::move(list));
    blocks.push_back(std::move(figures));
}

Document document_of(const KeepClear& found, const HeadroomShown& headroom, const Study& study,
                     const Origin& origin)
{
    std::vector<Block> blocks{Heading{1, "Space to be kept clear"},
                              Paragraph{keep_clear_sentence(found, study),
                                        found.is_kept() ? Tone::met : Tone::not_met, true}};
    for (const std::string& note : keep_clear_notes(found))
        blocks.push_back(Paragraph{note});
    blocks.insert(
        blocks.end(),
        {Notice{std::string(caution)},
         Paragraph{"The provenance of every figure stands beside it: look it up in the edition in "
                   "force before anybody relies on it."}});
    append(blocks, headroom_chapter(headroom, found, study));
    for (const KeepClearSpace& space : found.spaces)
        add_space(space, study, blocks);
    Terms terms;
    for (const Labelled& entry : origin_entries(origin))
        terms.terms.push_back({capitalised(entry.label), {entry.text}});
    blocks.push_back(Heading{1, "What this is of"});
    blocks.push_back(std::move(terms));
    const std::vector<std::string> names{origin.file, origin.title, origin.command};
    const std::string& of = origin.title;
    return typeset_document(
        {of.empty() ? "Keep-clear space" : "Keep-clear space: " + of, "", std::move(blocks)},
        names);
}

void put_intrusions(const KeepClearSpace& space, const std::string& file, const Study& study,
                    NewFolder& folder)
{
    std::vector<std::string> names;
    for (const Intrusion& intrusion : space.intrusions)
        names.push_back(file + "-into-" + name_of(intrusion, study));
    const std::vector<std::string> files = plain_names(names);
    for (std::size_t i = 0; i < files.size(); ++i) {
        const Intrusion& intrusion = space.intrusions[i];
        folder.put(files[i] + ".ply", painted_ply(intrusion));
        folder.put(
            files[i] + ".png",
            png_of(intrusion_map(intrusion, name_of(intrusion, study), study.vehicle).drawing));
    }
}

} // namespace

void write_keep_clear(const KeepClear& found, const HeadroomShown& headroom, const Study& study,
                      const std::string& command, NewFolder& folder)
{
    const Origin origin{study.file, study.title, command};
    const std::vector<std::string> files = space_files(found);
    for (std::size_t i = 0; i < files.size(); ++i) {
        const KeepClearSpace& space = found.spaces[i];
        const std::array parts = {NamedPart{files[i], &space.mesh}};
        folder.put(files[i] + ".obj", obj_of(parts));
        folder.put(files[i] + ".stl",
                   stl_of(space.mesh, "cornerglim: space to be kept clear; mm, vehicle frame"));
        put_intrusions(space, files[i], study, folder);
    }
    const Document document = document_of(found, headroom, study, origin);
    folder.put("keep-clear.html", html_page(document));
    folder.put("keep-clear.pdf", pdf_pages(document));
    folder.put("keep-clear.json",
               text_of(keep_clear_json(found, headroom.surfaces, study, command)));
    put_headroom(headroom, found, study, folder);
    folder.put("spaces.csv", spaces_csv(found, files));
    folder.put("intrusions.csv", intrusions_csv(found, study));
    folder.put("keep-clear.txt", keep_clear_words(found, headroom.surfaces, study) + "\n" +
                                     labelled_block(origin_entries(origin), 0, {}));
    folder.commit();
}

} // namespace glim
