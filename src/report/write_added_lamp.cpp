#include "report/write_added_lamp.h"

#include "drawing/colour_map.h"
#include "drawing/suitability_view.h"
#include "report/added_lamp_json.h"
#include "report/mesh_files.h"
#include "report/study_overlay.h"
#include "report/toml_text.h"
#include "words/added_lamp_words.h"
#include "words/keys.h"
#include "words/numbers.h"

#include <algorithm>

namespace glim {

namespace {

/// What is added to the study, under names that nothing has yet.
struct Added {
    std::string lamp, surface, mesh, file;
};

Added added_names(const Study& study, const Lamp& lamp, const std::string& file)
{
    std::string mesh = lamp.name + " lens";
    const auto taken = [&](const MeshSource& m) { return m.name == mesh; };
    while (std::any_of(study.meshes.begin(), study.meshes.end(), taken))
        mesh += " mesh";
    return {lamp.name, free_surface_name(study, lamp.name + " lens"), mesh, file};
}

OverlayTable surface_table(const Added& added, const Study& study, const Lamp& lamp,
                           SurfaceId carrier)
{
    return {"surface",
            true,
            {{"name", toml_text(added.surface)},
             {"mesh", toml_text(added.mesh)},
             {"role", toml_text("emitting")},
             {"orient", toml_text("as-is")},
             {"mirror", toml_text(lamp.paired ? "yes" : "no")},
             {"chord", shortest(in_mm(study.surfaces[carrier].chord.error))}}};
}

OverlayTable lamp_table(const Added& added, const Lamp& lamp)
{
    std::vector<TomlKey> keys{{"name", toml_text(added.lamp)},
                              {"function", toml_text(std::string(key_of(lamp.function)))},
                              {"side", toml_text(std::string(key_of(lamp.side)))},
                              {"emits", toml_list({added.surface})}};
    if (lamp.paired)
        keys.emplace_back("pair", "true");
    if (!lamp.category.empty())
        keys.emplace_back("category", toml_text(lamp.category));
    if (lamp.axis)
        keys.emplace_back("axis", toml_point(lamp.axis->vector()));
    return {"lamp", true, std::move(keys)};
}

OverlayTable check_table(const Added& added, const Study& study, const Check& check)
{
    std::vector<std::string> lamps;
    for (const LampId lamp : check.lamps)
        lamps.push_back(study.lamps[lamp].name);
    lamps.push_back(added.lamp);
    return {"check", true, {{"name", toml_text(check.name)}, {"lamps", toml_list(lamps)}}};
}

StudyOverlay overlay_of(const AddedLampAnswer& answer, const AddedPlace& place, const Study& study,
                        const std::string& file)
{
    const Added added = added_names(study, answer.lamp, file);
    StudyOverlay overlay;
    overlay.base = study.file;
    overlay.title = (study.title.empty() ? "" : study.title + ", ") + "one lamp added on " +
                    study.surfaces[place.lens.carrier].name;
    overlay.about = {"A lamp added at " + place_words(place.seat.centre) +
                     ": its lens is cut from the surface that carries it."};
    overlay.tables = {vehicle_mesh(added.mesh, added.file, study.vehicle),
                      surface_table(added, study, answer.lamp, place.lens.carrier),
                      lamp_table(added, answer.lamp)};
    for (const std::size_t c : answer.checks)
        overlay.tables.push_back(check_table(added, study, study.checks[c]));
    return overlay;
}

/// Where a place's study and lens are written.
struct PlaceFiles {
    std::string study, lens;
};

PlaceFiles files_of_rank(std::size_t rank)
{
    if (rank == 0)
        return {"study.toml", "added-lens.obj"};
    const std::string suffix = "-" + std::to_string(rank + 1);
    return {"place" + suffix + ".toml", "added-lens" + suffix + ".obj"};
}

void put_study(const StudyOverlay& overlay, const AddedPlace& place, const PlaceFiles& files,
               const std::filesystem::path& target, NewFolder& folder)
{
    const std::array parts = {NamedPart{"added_lens", &place.lens.mesh}};
    folder.put(files.lens, obj_of(parts));
    folder.put(files.study, overlay_text(overlay, target));
}

/// Beside the studies of lamps that answer alone: a check confirms it only where its rule lets
/// lamps answer together.
void put_filling(const AddedLampAnswer& answer, const Study& study,
                 const std::filesystem::path& target, NewFolder& folder)
{
    if (answer.filling.empty())
        return;
    const PlaceFiles files{"filling.toml", "filling-lens.obj"};
    const AddedPlace& place = answer.filling.front();
    StudyOverlay overlay = overlay_of(answer, place, study, files.lens);
    overlay.about.emplace_back("It fills the gap only: enough where the rule lets lamps answer "
                               "together, and nowhere else.");
    put_study(overlay, place, files, target, folder);
}

/// How well a place serves: 1 where a lamp answers alone or serves every failing direction.
double suitability(const CandidateFacet& c, std::size_t missing)
{
    if (c.alone)
        return 1;
    return missing > 0 ? static_cast<double>(c.serves) / static_cast<double>(missing) : 0;
}

/// The carriers as one mesh; each point as good as the best facet about it.
std::string suitability_ply(const AddedLampAnswer& answer, const Study& study)
{
    TriangleMesh body;
    PointFigures painted{"served_share", {}, {}};
    for (auto c = answer.candidates.begin(); c != answer.candidates.end();) {
        const TriangleMesh& mesh = study.surfaces[c->surface].mesh;
        const auto first = static_cast<std::uint32_t>(body.points.size());
        const SurfaceId surface = c->surface;
        body.points.insert(body.points.end(), mesh.points.begin(), mesh.points.end());
        painted.figures.resize(body.points.size());
        for (const Facet& f : mesh.facets)
            body.facets.push_back({f[0] + first, f[1] + first, f[2] + first});
        for (; c != answer.candidates.end() && c->surface == surface; ++c)
            for (const std::uint32_t corner : mesh.facets[c->facet]) {
                double& figure = painted.figures[first + corner];
                figure = std::max(figure, suitability(*c, answer.missing));
            }
    }
    for (const double figure : painted.figures)
        painted.colours.push_back(cividis(figure));
    return ply_of(body, painted,
                  "cornerglim: share of the failing directions that a lamp here serves");
}

} // namespace

void write_added_lamp(const AddedLampContent& content, const std::filesystem::path& target,
                      NewFolder& folder, const Workers& workers)
{
    const auto& [answer, session, task] = content;
    const Study& study = session.study();
    for (std::size_t i = 0; i < answer.alone.size(); ++i) {
        const PlaceFiles files = files_of_rank(i);
        put_study(overlay_of(answer, answer.alone[i], study, files.lens), answer.alone[i], files,
                  target, folder);
    }
    put_filling(answer, study, target, folder);
    folder.put("add-lamp.json", text_of(added_lamp_json(answer, study, task)));
    folder.put("summary.txt", added_lamp_words(answer, study, task));
    if (!answer.nothing_to_do()) {
        folder.put("places.csv", places_csv(answer, study));
        folder.put("suitability.ply", suitability_ply(answer, study));
        folder.put("suitability.png", png_of(suitability_view(answer, session, workers).drawing));
    }
    folder.commit();
}

} // namespace glim
