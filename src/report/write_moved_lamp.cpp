#include "report/write_moved_lamp.h"

#include "drawing/move_map_chart.h"
#include "report/file_names.h"
#include "report/mesh_files.h"
#include "report/moved_lamp_json.h"
#include "report/study_overlay.h"
#include "report/toml_text.h"
#include "words/moved_lamp_words.h"
#include "words/numbers.h"

#include <algorithm>

namespace glim {

namespace {

/// A trim's curve where the move takes it; a box only where it is not turned.
std::optional<std::string> moved_trim(const Trim& trim, const Placement& where, bool is_turned)
{
    if (trim.box && is_turned)
        return std::nullopt;
    std::vector<std::string> keys;
    if (trim.inset)
        keys.push_back("inset = " + shortest(in_mm(*trim.inset)));
    if (!trim.curve.empty()) {
        std::string points;
        for (const Point& p : trim.curve)
            points += (points.empty() ? "" : ", ") + toml_point(where(p));
        keys.push_back("curve = [" + points + "]");
    }
    if (trim.box)
        keys.push_back("box = { least = " + toml_point(where(trim.box->least)) +
                       ", most = " + toml_point(where(trim.box->most)) + " }");
    std::string text;
    for (const std::string& key : keys)
        text += (text.empty() ? "{ " : ", ") + key;
    return text + " }";
}

bool is_turned(const LampMove& move)
{
    return move[MoveWay::turn] != 0 || move[MoveWay::tilt] != 0;
}

/// Writes one answer's study.
class MovedStudy {
public:
    MovedStudy(const MovedLampContent& content, NewFolder& folder)
        : study_(content.study), move_(*content.answer.least),
          lamp_(content.study, content.answer.lamp), where_(lamp_.placement(move_)), folder_(folder)
    {
    }

    /// None where a trim cannot go with the lamp.
    std::optional<StudyOverlay> overlay()
    {
        const std::string& name = study_.lamps[lamp_.lamp()].name;
        StudyOverlay overlay;
        overlay.base = study_.file;
        overlay.title = (study_.title.empty() ? "" : study_.title + ", ") + name + " moved";
        overlay.about = {name + " moved " + move_words(move_) + ", with all that moves with it."};
        add_surfaces(overlay);
        for (const LampId id : lamp_.lamps()) {
            auto table = lamp_table(study_.lamps[id]);
            if (!table)
                return std::nullopt;
            overlay.tables.push_back(std::move(*table));
        }
        return overlay;
    }

private:
    void add_surfaces(StudyOverlay& overlay)
    {
        std::vector<SurfaceId> whole = lamp_.surfaces();
        std::erase_if(whole,
                      [&](SurfaceId s) { return study_.surfaces[s].lit_part_of.has_value(); });
        std::vector<std::string> names;
        names.reserve(whole.size());
        for (const SurfaceId s : whole)
            names.push_back(study_.surfaces[s].name);
        const std::vector<std::string> files = plain_names(names);
        for (std::size_t i = 0; i < whole.size(); ++i) {
            const Surface& surface = study_.surfaces[whole[i]];
            const TriangleMesh mesh = placed(surface.mesh, where_);
            const std::array parts = {NamedPart{names[i], &mesh}};
            folder_.put(files[i] + ".obj", obj_of(parts));
            if (surface.role == Role::emitting)
                add_lens(overlay, surface, files[i] + ".obj");
            else
                overlay.tables.push_back(reshaped_surface(surface, files[i] + ".obj"));
        }
    }

    static std::string moved_name(const std::string& name) { return "moved " + name; }

    /// A lit surface is not reshaped: a new one takes its place, and the old one is ignored.
    void add_lens(StudyOverlay& overlay, const Surface& lens, const std::string& file) const
    {
        const std::string name = toml_text(moved_name(lens.name));
        const auto* mirror = std::find_if(mirror_words.begin(), mirror_words.end(),
                                          [&](const auto& w) { return w.rule == lens.mirror; });
        overlay.tables.push_back(vehicle_mesh(moved_name(lens.name), file, study_.vehicle));
        overlay.tables.push_back({"surface",
                                  true,
                                  {{"name", name},
                                   {"mesh", name},
                                   {"role", toml_text("emitting")},
                                   {"orient", toml_text("as-is")},
                                   {"mirror", toml_text(std::string(mirror->word))},
                                   {"chord", shortest(in_mm(lens.chord.error))}}});
        overlay.tables.push_back(
            {"surface", true, {{"name", toml_text(lens.name)}, {"role", toml_text("ignored")}}});
    }

    /// What it emits from now, and what is said of it in the axes of the vehicle.
    std::optional<OverlayTable> lamp_table(const Lamp& lamp) const
    {
        std::vector<std::string> emits;
        for (const SurfaceId s : lamp.emits) {
            const SurfaceId whole = study_.surfaces[s].lit_part_of.value_or(s);
            const std::string& name = study_.surfaces[whole].name;
            const auto& moved = lamp_.surfaces();
            const bool moves = std::find(moved.begin(), moved.end(), whole) != moved.end();
            emits.push_back(moves ? moved_name(name) : name);
        }
        OverlayTable table{
            "lamp", true, {{"name", toml_text(lamp.name)}, {"emits", toml_list(emits)}}};
        if (lamp.centre)
            table.keys.emplace_back("centre", toml_point(where_(*lamp.centre)));
        if (lamp.axis)
            table.keys.emplace_back("axis", toml_point(where_(*lamp.axis).vector()));
        if (!lamp.trim)
            return table;
        const auto trim = moved_trim(*lamp.trim, where_, is_turned(move_));
        if (!trim)
            return std::nullopt;
        table.keys.emplace_back("trim", *trim);
        return table;
    }

    const Study& study_;
    LampMove move_;
    MovableLamp lamp_;
    Placement where_;
    NewFolder& folder_;
};

} // namespace

void write_moved_lamp(const MovedLampContent& content, const std::filesystem::path& target,
                      NewFolder& folder)
{
    const auto& [answer, map, study, task] = content;
    if (answer.least)
        if (const auto overlay = MovedStudy(content, folder).overlay())
            folder.put("study.toml", overlay_text(*overlay, target));
    folder.put("move-lamp.json", text_of(moved_lamp_json(answer, study, task)));
    folder.put("summary.txt", moved_lamp_words(answer, study, task));
    if (!map.answers.empty()) {
        const Figure chart = move_map_chart(map, answer, study);
        folder.put("map.csv", move_map_csv(map));
        folder.put("map.png", png_of(chart.drawing));
        folder.put("map.svg", svg_of(chart.drawing));
    }
    folder.commit();
}

} // namespace glim
