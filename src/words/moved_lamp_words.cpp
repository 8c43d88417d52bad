#include "words/moved_lamp_words.h"

#include "model/asked_checks.h"
#include "model/rule.h"
#include "words/name_list.h"
#include "words/numbers.h"
#include "words/rule_source_words.h"

#include <cmath>

namespace glim {

namespace {

constexpr int indent = 2;

/// What the two senses of a way are called.
struct WaySenses {
    std::string_view positive, negative;
};
constexpr std::array senses = {
    WaySenses{"forward", "rearward"},
    WaySenses{"outboard", "inboard"},
    WaySenses{"up", "down"},
    WaySenses{"to look more outboard", "to look more inboard"},
    WaySenses{"to look more up", "to look more down"},
};

std::string_view sense_of(MoveWay way, bool positive)
{
    const WaySenses& both = senses[static_cast<std::size_t>(way)];
    return positive ? both.positive : both.negative;
}

std::vector<std::string> check_names(const MovedLampAnswer& answer, const Study& study)
{
    std::vector<std::string> names;
    names.reserve(answer.checks.size());
    for (const std::size_t c : answer.checks)
        names.push_back(quoted(study.checks[c].name));
    return names;
}

std::string limit_words(const WayAnswer& way, const MoveLampTask& task)
{
    const MoveLimits& limits = task.limits[static_cast<std::size_t>(way.way)];
    return rounded(std::abs(way.positive ? limits.most : limits.least), 2) +
           (turns(way.way) ? " deg" : " mm");
}

std::string found_words(const WayAnswer& way, const MoveLampTask& task)
{
    if (!way.least)
        return "not within " + limit_words(way, task);
    if (!turns(way.way)) // the lit face goes as far as the lamp
        return rounded(std::abs(*way.least), 2) + " mm";
    return rounded(std::abs(*way.least), 2) + " deg; the lit face moves " +
           rounded(in_mm(way.farthest), 2) + " mm at most";
}

std::string confirmed_words(const MovedLampAnswer& answer, const Study& study)
{
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < answer.confirmed.size(); ++i)
        parts.push_back(std::string(words_of(answer.confirmed[i])) + ": " +
                        quoted(study.checks[answer.checks[i]].name));
    return name_list(parts);
}

std::vector<Labelled> least_entries(const MovedLampAnswer& answer, const Study& study)
{
    std::vector<std::string> surfaces;
    for (const SurfaceId s : answer.surfaces)
        surfaces.push_back(study.surfaces[s].name);
    return {{"move", move_words(*answer.least)},
            {"lit face", "moves " + rounded(in_mm(answer.farthest), 2) +
                             " mm where it moves farthest: the least found in " +
                             std::to_string(answer.tried) + " moves looked at"},
            {"with it", name_list(surfaces)},
            {"check", confirmed_words(answer, study)}};
}

} // namespace

std::string way_words(MoveWay way, double by)
{
    const std::string figure = rounded(std::abs(by), 2);
    const std::string sense(sense_of(way, by >= 0));
    return turns(way) ? "turned " + figure + " deg " + sense : figure + " mm " + sense;
}

std::string move_words(const LampMove& move)
{
    constexpr double least = 0.005; // is written as 0
    std::vector<std::string> parts;
    for (const MoveWayWord& word : move_way_words)
        if (std::abs(move[word.way]) >= least)
            parts.push_back(way_words(word.way, move[word.way]));
    return parts.empty() ? "not at all" : name_list(parts);
}

std::string moved_lamp_sentence(const MovedLampAnswer& answer, const Study& study)
{
    const std::string lamp = quoted(study.lamps[answer.lamp].name);
    const std::string asked = name_list(check_names(answer, study));
    if (answer.met_as_drawn)
        return "Every check asked is met with " + lamp + " as drawn: it may stay.";
    if (!answer.least)
        return "No move of " + lamp + " was found within its limits by which " + asked +
               (answer.checks.size() == 1 ? " is met." : " are met.");
    return "Moved " + move_words(*answer.least) + ", " + lamp + " meets " + asked + ".";
}

std::string moved_lamp_words(const MovedLampAnswer& answer, const Study& study,
                             const MoveLampTask& task, const TextStyle& style)
{
    std::string text = wrapped(moved_lamp_sentence(answer, study), style.columns) + "\n";
    const std::string sources =
        "\n" + rule_sources_words(asked_rows(study, asked_checks(study, task.checks)), style) +
        "\n";
    if (answer.met_as_drawn)
        return text + sources + wrapped(caution, style.columns) + "\n";
    if (answer.least)
        text += "\nThe least move found\n" +
                labelled_block(least_entries(answer, study), indent, style);
    std::vector<Labelled> ways;
    for (const WayAnswer& way : answer.ways)
        ways.push_back({std::string(sense_of(way.way, way.positive)), found_words(way, task)});
    text += "\n" +
            wrapped("One way alone, looked at every " + angle_words(answer.step), style.columns) +
            "\n" + labelled_block(ways, indent, style);
    text += wrapped("The body stays: whether the lamp has room where it is moved to, and whether "
                    "its cut in the body fits, has to be seen in CAD. A lamp that turns or tilts "
                    "turns its light with it: whether its light output still meets its own rule is "
                    "not looked at.",
                    style.columns);
    return text + "\n" + sources + wrapped(caution, style.columns) + "\n";
}

} // namespace glim
