#include "report/added_lamp_json.h"

#include "model/asked_checks.h"
#include "report/csv.h"
#include "report/rule_sources.h"
#include "words/added_lamp_words.h"
#include "words/keys.h"
#include "words/numbers.h"

#include <algorithm>

namespace glim {

namespace {

Json point_json(const Vector& p) { return Json::Array{p.x(), p.y(), p.z()}; }

Json outcomes_json(const AddedPlace& place)
{
    Json::Array outcomes;
    for (const Outcome outcome : place.outcomes)
        outcomes.emplace_back(key_of(outcome));
    return outcomes;
}

Json place_json(const AddedPlace& place, const Study& study)
{
    return Json::Object{
        {"surface", study.surfaces[place.lens.carrier].name},
        {"centre_mm", point_json(place.seat.centre)},
        {"looks", point_json(place.seat.facing.vector())},
        {"width_mm", in_mm(place.width)},
        {"height_mm", in_mm(place.height)},
        {"lens_mm2", in_mm2(place.face)},
        {"too_small_width_mm", place.too_small ? Json(in_mm(*place.too_small)) : Json()},
        {"along_surface_mm", in_mm(place.along_surface)},
        {"behind_nose_mm", in_mm(place.behind_nose)},
        {"in_sight_mm2", in_mm2(place.in_sight)},
        {"outcomes", outcomes_json(place)}};
}

Json places_json(const std::vector<AddedPlace>& places, const Study& study)
{
    Json::Array all;
    for (const AddedPlace& place : places)
        all.push_back(place_json(place, study));
    return all;
}

Json cover_json(const AddedLampAnswer& answer, const Study& study)
{
    if (!answer.cover)
        return {};
    Json::Array places;
    for (const std::size_t i : answer.cover->facets) {
        const CandidateFacet& c = answer.candidates[i];
        places.push_back(Json::Object{{"surface", study.surfaces[c.surface].name},
                                      {"centre_mm", point_json(c.centre)}});
    }
    return Json::Object{{"is_fewest", answer.cover->is_fewest}, {"lamps", std::move(places)}};
}

Json counts_json(const AddedLampAnswer& answer)
{
    const CandidateCounts& c = answer.counts;
    const auto count = [](std::size_t n) { return static_cast<long long>(n); };
    return Json::Object{{"facets", count(c.all)},
                        {"no_room_by_rules", count(c.no_room_by_rules)},
                        {"serve_none", count(c.serve_none)},
                        {"serve_some", count(c.serve_some)},
                        {"serve_all", count(c.serve_all)},
                        {"alone", count(c.alone)},
                        {"failing_directions", count(answer.missing)},
                        {"step_deg", in_degrees(answer.step)}};
}

Json light_json(const AddedLampAnswer& answer)
{
    Json::Array all;
    for (const LightAsked& light : answer.light)
        all.push_back(Json::Object{
            {"row", light.row.id},
            {"title", light.row.title},
            {"least_cd", light.everywhere ? Json(in_candelas(*light.everywhere)) : Json()}});
    return all;
}

Json names_json(const std::vector<std::string>& names)
{
    Json::Array all;
    for (const std::string& name : names)
        all.emplace_back(name);
    return all;
}

std::string_view rank_key(const AddLampTask& task)
{
    return std::find_if(place_rank_words.begin(), place_rank_words.end(),
                        [&](const auto& w) { return w.rank == task.rank; })
        ->key;
}

std::vector<std::string> csv_cells(const AddedPlace& place, const std::string& kind,
                                   const Study& study)
{
    const Point& p = place.seat.centre;
    return {kind,
            study.surfaces[place.lens.carrier].name,
            csv_number(millimetres(p.x())),
            csv_number(millimetres(p.y())),
            csv_number(millimetres(p.z())),
            csv_number(place.width),
            csv_number(place.height),
            csv_number(place.face),
            csv_number(place.along_surface),
            csv_number(place.behind_nose),
            csv_number(place.in_sight)};
}

} // namespace

Json added_lamp_json(const AddedLampAnswer& answer, const Study& study, const AddLampTask& task)
{
    std::vector<std::string> checks;
    for (const std::size_t c : answer.checks)
        checks.push_back(study.checks[c].name);
    Json::Object json{
        {"caution", caution},
        {"rule_sources", rule_sources_json(asked_rows(study, asked_checks(study, task.checks)))},
        {"answer", added_lamp_sentence(answer, study)},
        {"checks_not_met", names_json(checks)}};
    if (answer.nothing_to_do())
        return json;
    json.insert(json.end(), {{"lamp_helped", study.lamps[answer.helped].name},
                             {"function", key_of(answer.lamp.function)},
                             {"rank", rank_key(task)},
                             {"alone", places_json(answer.alone, study)},
                             {"only_together", places_json(answer.filling, study)},
                             {"several_lamps", cover_json(answer, study)},
                             {"light", light_json(answer)},
                             {"by_tables", names_json(answer.by_tables)},
                             {"candidates", counts_json(answer)}});
    return json;
}

std::string places_csv(const AddedLampAnswer& answer, const Study& study)
{
    std::string text =
        csv_row({"answers", "surface", "x_mm", "y_mm", "z_mm", "width_mm", "height_mm", "lens_mm2",
                 "along_surface_mm", "behind_nose_mm", "in_sight_mm2"});
    for (const AddedPlace& place : answer.alone)
        text += csv_row(csv_cells(place, "alone", study));
    for (const AddedPlace& place : answer.filling)
        text += csv_row(csv_cells(place, "only_together", study));
    return text;
}

} // namespace glim
