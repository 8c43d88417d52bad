#include "report/headroom_json.h"

#include "remedy/way_to_space.h"
#include "report/csv.h"
#include "words/headroom_words.h"
#include "words/numbers.h"

namespace glim {

namespace {

constexpr int normal_decimals = 6;

Json json_of(const Vector& v) { return Json::Array{v.x(), v.y(), v.z()}; }

Json space_json(const KeepClearSpace& space, const std::optional<Length>& least,
                const Point& tightest)
{
    return Json::Object{{"check", space.check},
                        {"row", space.row.id},
                        {"lamp", space.lamp},
                        {"lamp_mirrored", space.twin},
                        {"least_mm", least ? Json(in_mm(*least)) : Json()},
                        {"at_mm", least ? json_of(tightest) : Json()}};
}

Json surface_json(const Headroom& h, const KeepClear& found, const Study& study)
{
    Json::Array areas, spaces;
    for (const Area area : h.within)
        areas.push_back(in_mm2(area));
    for (const SpaceHeadroom& s : h.by_space)
        spaces.push_back(space_json(found.spaces[s.space], s.least, s.tightest));
    return Json::Object{{"surface", study.surfaces[h.surface.surface].name},
                        {"mirrored", h.surface.twin},
                        {"least_mm", h.least ? Json(in_mm(*h.least)) : Json()},
                        {"at_mm", h.least ? json_of(h.tightest) : Json()},
                        {"normal", h.least ? json_of(h.way) : Json()},
                        {"area_below_mm2", std::move(areas)},
                        {"spaces", std::move(spaces)}};
}

std::string yes_no(bool yes) { return yes ? "yes" : "no"; }

void add_place(std::vector<std::string>& cells, const Vector& place, bool known)
{
    for (int i = 0; i < 3; ++i)
        cells.push_back(known ? csv_number(millimetres(place[i])) : "");
}

void add_space(std::vector<std::string>& cells, const KeepClearSpace* space)
{
    if (space)
        cells.insert(cells.end(), {space->check, space->row.id, space->lamp, yes_no(space->twin)});
    else
        cells.insert(cells.end(), 4, "");
}

} // namespace

Json headroom_json(const std::vector<Headroom>& headroom, const KeepClear& found,
                   const Study& study)
{
    Json::Array levels, surfaces;
    for (const Length level : headroom_levels)
        levels.push_back(in_mm(level));
    for (const Headroom& h : headroom)
        surfaces.push_back(surface_json(h, found, study));
    return Json::Object{{"sentence", headroom_sentence(headroom, study)},
                        {"free_from_mm", in_mm(farthest_way_in)},
                        {"levels_mm", std::move(levels)},
                        {"surfaces", std::move(surfaces)}};
}

std::string headroom_csv(const std::vector<Headroom>& headroom, const KeepClear& found,
                         const Study& study)
{
    std::vector<std::string> titles{
        "surface",  "mirrored", "headroom_mm", "free",  "x_mm", "y_mm", "z_mm",
        "normal_x", "normal_y", "normal_z",    "check", "row",  "lamp", "lamp_mirrored"};
    for (const Length level : headroom_levels)
        titles.push_back("mm2_below_" + rounded(in_mm(level), 0) + "_mm");
    std::string text = csv_row(titles);
    for (const Headroom& h : headroom) {
        const bool known = h.least.has_value();
        std::vector<std::string> cells{study.surfaces[h.surface.surface].name,
                                       yes_no(h.surface.twin), known ? csv_number(*h.least) : "",
                                       yes_no(!known)};
        add_place(cells, h.tightest, known);
        for (int i = 0; i < 3; ++i)
            cells.push_back(known ? rounded(h.way[i], normal_decimals) : "");
        add_space(cells, known ? &found.spaces[h.space] : nullptr);
        for (const Area area : h.within)
            cells.push_back(csv_number(area));
        text += csv_row(cells);
    }
    return text;
}

std::string headroom_by_space_csv(const std::vector<Headroom>& headroom, const KeepClear& found,
                                  const Study& study)
{
    std::string text = csv_row({"surface", "mirrored", "check", "row", "lamp", "lamp_mirrored",
                                "headroom_mm", "free", "x_mm", "y_mm", "z_mm"});
    for (const Headroom& h : headroom)
        for (const SpaceHeadroom& s : h.by_space) {
            std::vector<std::string> cells{study.surfaces[h.surface.surface].name,
                                           yes_no(h.surface.twin)};
            add_space(cells, &found.spaces[s.space]);
            cells.push_back(s.least ? csv_number(*s.least) : "");
            cells.push_back(yes_no(!s.least));
            add_place(cells, s.tightest, s.least.has_value());
            text += csv_row(cells);
        }
    return text;
}

} // namespace glim
