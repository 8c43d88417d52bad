#include "words/added_lamp_words.h"

#include "geometry/bearing.h"
#include "model/asked_checks.h"
#include "model/rule.h"
#include "words/bearing_words.h"
#include "words/keys.h"
#include "words/name_list.h"
#include "words/numbers.h"
#include "words/rule_source_words.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr int indent = 2;

std::string mm(Length length) { return rounded(in_mm(length), 1) + " mm"; }

std::vector<std::string> check_names(const AddedLampAnswer& answer, const Study& study)
{
    std::vector<std::string> names;
    names.reserve(answer.checks.size());
    for (const std::size_t c : answer.checks)
        names.push_back(quoted(study.checks[c].name));
    return names;
}

std::string size_words(const AddedPlace& place, const AddLampTask& task)
{
    const std::string outline = task.width_to_height
                                    ? mm(place.width) + " wide, " + mm(place.height) + " high"
                                    : "round, " + mm(place.width) + " across";
    return outline + "; lens " + area_words(place.face);
}

/// Which way it looks, from the vehicle's forward axis.
std::string facing_words(const AddedPlace& place, const Study& study, const Lamp& lamp)
{
    const Vehicle& vehicle = study.vehicle;
    const Bearing b =
        bearing_of(place.seat.facing, {vehicle.forward, vehicle.outboard(lamp.side), vehicle.up});
    return bearing_words({degrees(std::round(in_degrees(b.h) * 10) / 10),
                          degrees(std::round(in_degrees(b.v) * 10) / 10)},
                         {ReferenceAxis::forward, lamp.side});
}

std::string proof_words(const AddedPlace& place, const AddedLampAnswer& answer, const Study& study)
{
    if (place.outcomes.empty())
        return "measured in the failing directions; no check can confirm it, since the rules asked "
               "do not let lamps answer together";
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < place.outcomes.size(); ++i)
        parts.push_back(std::string(words_of(place.outcomes[i])) + ": " +
                        quoted(study.checks[answer.checks[i]].name));
    return name_list(parts) + "; by a check of the lamp itself";
}

std::vector<Labelled> entries_of(const AddedPlace& place, const AddedLampAnswer& answer,
                                 const Study& study, const AddLampTask& task)
{
    std::vector<Labelled> entries = {
        {"on", study.surfaces[place.lens.carrier].name},
        {"centre", place_words(place.seat.centre) + " (vehicle)"},
        {"size", size_words(place, task)},
        {"looks", facing_words(place, study, answer.lamp)},
        {"harness", mm(place.along_surface) + " along the surface from " +
                        quoted(study.lamps[answer.helped].name) + ", by its edges"},
        {"behind nose", mm(place.behind_nose)},
        {"in sight", area_words(place.in_sight) + " on the mean from all around, level"},
        {"check", proof_words(place, answer, study)}};
    if (place.too_small)
        entries.insert(
            entries.begin() + 3,
            {"least", "a lens " + rounded(in_mm(*place.too_small), 2) +
                          " mm wide is not enough: the size is found to 1 % of its area"});
    return entries;
}

std::string places_text(const std::vector<AddedPlace>& places, const AddedLampAnswer& answer,
                        const Study& study, const AddLampTask& task, const TextStyle& style)
{
    std::string text;
    for (std::size_t i = 0; i < places.size(); ++i)
        text += (places.size() > 1 ? "Place " + std::to_string(i + 1) + "\n" : "") +
                labelled_block(entries_of(places[i], answer, study, task), indent, style);
    return text;
}

std::string rank_words(const AddLampTask& task)
{
    return std::string(
        std::find_if(place_rank_words.begin(), place_rank_words.end(), [&](const auto& w) {
            return w.rank == task.rank;
        })->words);
}

std::string candidates_words(const AddedLampAnswer& answer)
{
    const CandidateCounts& c = answer.counts;
    std::string words = counted(c.all, "facet") + ", looked at every " + angle_words(answer.step);
    if (c.no_room_by_rules > 0)
        words += "; on " + std::to_string(c.no_room_by_rules) +
                 " the table's rows of place leave no room";
    words += "; " + std::to_string(c.serve_none) + " serve no failing direction, " +
             std::to_string(c.serve_some) + " some, " + std::to_string(c.serve_all) +
             " all of them; " + std::to_string(c.alone) + " every direction of every row";
    return words;
}

std::string cover_words(const AddedLampAnswer& answer, const Study& study)
{
    std::vector<std::string> places;
    for (const std::size_t i : answer.cover->facets) {
        const CandidateFacet& c = answer.candidates[i];
        places.push_back("on " + study.surfaces[c.surface].name + " at " + place_words(c.centre));
    }
    return "No single place sees every failing direction. " +
           std::string(answer.cover->is_fewest ? "The fewest lamps that do are "
                                               : "So many lamps do, perhaps one too many: ") +
           std::to_string(places.size()) + ", " + name_list(places) +
           "; only where the rule lets lamps answer together";
}

std::string light_words_of(const LightAsked& light)
{
    const std::string row = "row " + quoted(light.row.id);
    if (light.everywhere)
        return row + " asks " + shortest(in_candelas(*light.everywhere)) +
               " cd of it in every direction of the row's field";
    return row + " asks it for a table of points (" + light.row.title + ")";
}

std::string what_it_must_be(const AddedLampAnswer& answer, const TextStyle& style)
{
    std::string text;
    for (const std::string& words : answer.by_tables)
        text += wrapped("What the table says of added lamps: " + words + ".", style.columns) + "\n";
    for (const LightAsked& light : answer.light)
        text +=
            wrapped("Light: " + light_words_of(light) +
                        "; its sizes answer only rows of area, and its light is to be measured.",
                    style.columns) +
            "\n";
    return text;
}

} // namespace

std::string place_words(const Point& p)
{
    return "x " + rounded(p.x(), 1) + ", y " + rounded(p.y(), 1) + ", z " + rounded(p.z(), 1) +
           " mm";
}

std::string added_lamp_sentence(const AddedLampAnswer& answer, const Study& study)
{
    if (answer.nothing_to_do())
        return "Every check asked is met already: no lamp has to be added.";
    const std::string asked = name_list(check_names(answer, study));
    if (answer.alone.empty())
        return "No place was found where one more lamp alone answers " + asked + ".";
    const AddedPlace& best = answer.alone.front();
    return "One more " + std::string(words_of(answer.lamp.function)) + " answers " + asked +
           " alone: " + area_words(best.face) + " of lens on " +
           study.surfaces[best.lens.carrier].name + ".";
}

std::string added_lamp_words(const AddedLampAnswer& answer, const Study& study,
                             const AddLampTask& task, const TextStyle& style)
{
    std::string text = wrapped(added_lamp_sentence(answer, study), style.columns) + "\n";
    if (answer.nothing_to_do())
        return text;
    if (!answer.alone.empty())
        text += "\nA lamp that answers every row alone; " + rank_words(task) + "\n" +
                places_text(answer.alone, answer, study, task, style);
    if (!answer.filling.empty())
        text += "\n" +
                wrapped("A lamp for the failing directions only: only where the rule lets lamps "
                        "answer together",
                        style.columns) +
                "\n" + places_text(answer.filling, answer, study, task, style);
    if (answer.cover)
        text += "\n" + wrapped(cover_words(answer, study) + ".", style.columns) + "\n";
    text += "\n" + what_it_must_be(answer, style);
    return text + labelled_block({{"Candidates", candidates_words(answer)}}, 0, style) + "\n" +
           rule_sources_words(asked_rows(study, asked_checks(study, task.checks)), style) + "\n" +
           wrapped(caution, style.columns) + "\n";
}

} // namespace glim
