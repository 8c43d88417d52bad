#include "report/keep_clear_json.h"

#include "remedy/way_to_space.h"
#include "report/csv.h"
#include "report/file_names.h"
#include "report/headroom_json.h"
#include "words/keep_clear_words.h"
#include "words/keys.h"
#include "words/numbers.h"

#include <algorithm>

namespace glim {

namespace {

constexpr int share_decimals = 6;

Json json_of(const Vector& v) { return Json::Array{v.x(), v.y(), v.z()}; }

Json json_of(const Box& box)
{
    return Json::Object{{"least_mm", json_of(box.least)}, {"most_mm", json_of(box.most)}};
}

std::string_view key_of(FavouredEdge edge)
{
    return std::find_if(favoured_edge_words.begin(), favoured_edge_words.end(),
                        [&](const FavouredEdgeWord& row) { return row.edge == edge; })
        ->key;
}

Json field_json(const Field& field)
{
    Json::Array rectangles;
    for (const FieldRectangle& r : field.rectangles)
        rectangles.push_back(
            Json::Object{{"h_deg", Json::Array{in_degrees(r.h_least), in_degrees(r.h_most)}},
                         {"v_deg", Json::Array{in_degrees(r.v_least), in_degrees(r.v_most)}}});
    return rectangles;
}

/// By choice: its check, and each way as a list of rows.
Json choices_json(const KeepClear& found)
{
    Json::Array choices;
    for (const ChoiceOfSpaces& choice : found.choices) {
        Json::Array ways;
        for (const std::vector<std::string>& rows : choice.ways)
            ways.push_back(Json::Array(rows.begin(), rows.end()));
        choices.push_back(Json::Object{{"check", choice.check}, {"ways", std::move(ways)}});
    }
    return choices;
}

Json json_of(const Intrusion& intrusion, const Study& study)
{
    return Json::Object{{"surface", study.surfaces[intrusion.surface.surface].name},
                        {"mirrored", intrusion.surface.twin},
                        {"depth_mm", in_mm(intrusion.depth)},
                        {"or_more", intrusion.depth >= deepest_intrusion},
                        {"deepest_mm", json_of(intrusion.deepest)},
                        {"box", json_of(intrusion.box)},
                        {"share_of_field", intrusion.share_of_field}};
}

Json json_of(const KeepClearSpace& space, const Study& study, const std::string& file)
{
    Json::Array intrusions;
    for (const Intrusion& intrusion : space.intrusions)
        intrusions.push_back(json_of(intrusion, study));
    Json by_edge;
    if (!space.by_edge.empty()) {
        Json::Object volumes;
        for (std::size_t i = 0; i < space.by_edge.size(); ++i)
            volumes.emplace_back(std::string(favoured_edge_words[i].key) + "_mm3",
                                 in_mm3(space.by_edge[i]));
        by_edge = Json(std::move(volumes));
    }
    return Json::Object{{"check", space.check},
                        {"row", space.row.id},
                        {"provenance", key_of(space.row.citation.provenance)},
                        {"source", space.row.citation.source},
                        {"lamp", space.lamp},
                        {"mirrored", space.twin},
                        {"field", field_json(space.field)},
                        {"relaxed", space.relaxed},
                        {"kept", space.kept ? Json(key_of(*space.kept)) : Json("whole")},
                        {"needed_mm2", space.needed > Area() ? Json(in_mm2(space.needed)) : Json()},
                        {"pieces_of_field", space.pieces},
                        {"pieces_lamp_too_small", space.too_small},
                        {"least_shown_mm2", in_mm2(space.least.shown)},
                        {"least_h_deg", in_degrees(space.least.from.h)},
                        {"least_v_deg", in_degrees(space.least.from.v)},
                        {"lamp_too_small", space.shows_too_little},
                        {"not_needed", space.spared},
                        {"about_by_edge", std::move(by_edge)},
                        {"mesh", file + ".stl"},
                        {"facets", space.mesh.facets.size()},
                        {"bodies", space.bodies},
                        {"volume_mm3", in_mm3(space.volume)},
                        {"within_mm", space.within ? Json(in_mm(*space.within)) : Json()},
                        {"intrusions", std::move(intrusions)}};
}

} // namespace

std::vector<std::string> space_files(const KeepClear& found)
{
    std::vector<std::string> names;
    for (const KeepClearSpace& space : found.spaces)
        names.push_back(space.row.id + " " + space.lamp + (space.twin ? " mirrored" : ""));
    return plain_names(names);
}

Json keep_clear_json(const KeepClear& found, const std::vector<Headroom>& headroom,
                     const Study& study, const std::string& command)
{
    const std::vector<std::string> files = space_files(found);
    Json::Array spaces;
    for (std::size_t i = 0; i < found.spaces.size(); ++i)
        spaces.push_back(json_of(found.spaces[i], study, files[i]));
    Json::Array without(found.without_space.begin(), found.without_space.end());
    return Json::Object{{"caution", caution},
                        {"study", study.file},
                        {"title", study.title},
                        {"command", command},
                        {"clear", found.is_kept()},
                        {"sentence", keep_clear_sentence(found, study)},
                        {"one_is_enough", choices_json(found)},
                        {"chord_error_mm", in_mm(found.chord_error)},
                        {"reach", found.reach.empty() ? Json() : json_of(found.reach)},
                        {"spaces", std::move(spaces)},
                        {"headroom", headroom_json(headroom, found, study)},
                        {"rows_without_space", std::move(without)}};
}

std::string spaces_csv(const KeepClear& found, const std::vector<std::string>& files)
{
    std::string text =
        csv_row({"check", "row", "provenance", "lamp", "mirrored", "kept", "needed_mm2",
                 "volume_mm3", "within_mm", "bodies", "facets", "intrusions", "mesh",
                 "least_shown_mm2", "lamp_too_small", "not_needed"});
    for (std::size_t i = 0; i < found.spaces.size(); ++i) {
        const KeepClearSpace& s = found.spaces[i];
        text +=
            csv_row({s.check, s.row.id, std::string(key_of(s.row.citation.provenance)), s.lamp,
                     s.twin ? "yes" : "no", std::string(s.kept ? key_of(*s.kept) : "whole"),
                     s.needed > Area() ? csv_number(s.needed) : "", rounded(in_mm3(s.volume), 0),
                     s.within ? csv_number(*s.within) : "", std::to_string(s.bodies),
                     std::to_string(s.mesh.facets.size()), std::to_string(s.intrusions.size()),
                     files[i] + ".stl", csv_number(s.least.shown),
                     s.shows_too_little ? "yes" : "no", s.spared ? "yes" : "no"});
    }
    return text;
}

std::string intrusions_csv(const KeepClear& found, const Study& study)
{
    std::string text = csv_row({"check", "row", "lamp", "mirrored", "surface", "surface_mirrored",
                                "depth_mm", "x_mm", "y_mm", "z_mm", "share_of_field", "or_more"});
    for (const KeepClearSpace& s : found.spaces)
        for (const Intrusion& i : s.intrusions)
            text += csv_row({s.check, s.row.id, s.lamp, s.twin ? "yes" : "no",
                             study.surfaces[i.surface.surface].name, i.surface.twin ? "yes" : "no",
                             csv_number(i.depth), csv_number(millimetres(i.deepest.x())),
                             csv_number(millimetres(i.deepest.y())),
                             csv_number(millimetres(i.deepest.z())),
                             rounded(i.share_of_field, share_decimals),
                             i.depth >= deepest_intrusion ? "yes" : "no"});
    return text;
}

} // namespace glim
