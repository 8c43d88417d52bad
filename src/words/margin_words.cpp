#include "words/margin_words.h"

#include "model/asked_checks.h"
#include "model/rule.h"
#include "words/bearing_words.h"
#include "words/name_list.h"
#include "words/numbers.h"
#include "words/row_words.h"
#include "words/rule_source_words.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace glim {

namespace {

constexpr int indent = 2;
constexpr double least_gain_told = 0.05; // mm2 a mm

struct WaySenses {
    std::string_view along, against, name;
};
constexpr std::array senses = {
    WaySenses{"forward", "rearward", "fore and aft"},
    WaySenses{"outboard", "inboard", "across"},
    WaySenses{"up", "down", "up and down"},
    WaySenses{"outward", "inward", "normal offset"},
};

std::string mm(Length length) { return rounded(in_mm(length), 2) + " mm"; }

std::string check_table(const CheckMargins& check, const MarginFindings& found, const Study& study)
{
    std::vector<std::vector<std::string>> rows = {
        {"surface", "moved", check.met ? "spoils it" : "mends it", "loses"}};
    for (const SurfaceMargin& margin : check.margins)
        rows.push_back({study.surfaces[margin.surface].name, std::string(words_of(margin.way)),
                        margin_moves_words(margin, found), margin_gain_words(margin)});
    std::string text;
    for (const std::string& line : aligned_rows(rows))
        text += std::string(indent, ' ') + line + "\n";
    return text;
}

std::string state_words(const CheckMargins& check)
{
    if (check.margin == Area())
        return check.met ? "met" : "not met";
    const std::string area = area_words(check.margin > Area() ? check.margin : -check.margin);
    return check.met ? "met with " + area + " to spare" : "not met, " + area + " too little";
}

/// The nearest change along the normal of each surface, the nearest first.
std::vector<std::pair<Length, SurfaceId>> nearest(const CheckMargins& check)
{
    std::vector<std::pair<Length, SurfaceId>> all;
    for (const SurfaceMargin& margin : check.margins) {
        if (margin.way != MarginWay::normal || !(margin.along || margin.against))
            continue;
        const Length far = millimetres(std::numeric_limits<double>::infinity());
        all.emplace_back(std::min(margin.along.value_or(far), margin.against.value_or(far)),
                         margin.surface);
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    return all;
}

} // namespace

std::string_view sense_of(MarginWay way, bool along)
{
    const WaySenses& both = senses[static_cast<std::size_t>(way)];
    return along ? both.along : both.against;
}

std::string_view words_of(MarginWay way) { return senses[static_cast<std::size_t>(way)].name; }

std::string margin_moves_words(const SurfaceMargin& margin, const MarginFindings& found)
{
    std::vector<std::string> parts;
    if (margin.along)
        parts.push_back(mm(*margin.along) + " " + std::string(sense_of(margin.way, true)));
    if (margin.against)
        parts.push_back(mm(*margin.against) + " " + std::string(sense_of(margin.way, false)));
    return parts.empty() ? "not within " + mm(found.wanted.reach) : name_list(parts);
}

std::string margin_gain_words(const SurfaceMargin& margin)
{
    if (std::abs(margin.gain_mm) < least_gain_told)
        return "nothing at first";
    return rounded(std::abs(margin.gain_mm), 1) + " mm2 a mm " +
           std::string(sense_of(margin.way, margin.gain_mm < 0));
}

std::string margin_sentence(const CheckMargins& check, const MarginFindings& found,
                            const Study& study)
{
    const std::string name = quoted(study.checks[check.check].name);
    if (!check.left_out.empty())
        return name + " has no margin in mm: " + check.left_out + ".";
    std::vector<std::string> parts;
    for (const auto& [length, surface] : nearest(check))
        parts.push_back(quoted(study.surfaces[surface].name) + (check.met ? " has " : " by ") +
                        mm(length));
    const std::string begin = name + " is " + state_words(check) + "; ";
    if (parts.empty())
        return begin + "no surface alone changes that along its normal within " +
               mm(found.wanted.reach) + ".";
    return begin + (check.met ? "along its normal " : "one surface alone would do, offset ") +
           name_list(parts) + ".";
}

std::string margin_idle_words(const MarginFindings& found, const Study& study)
{
    if (found.idle.empty())
        return {};
    std::vector<std::string> names;
    for (const SurfaceId s : found.idle)
        names.push_back(quoted(study.surfaces[s].name));
    return "Moved alone by up to " + mm(found.wanted.reach) +
           " these change nothing: " + name_list(names) + ".";
}

std::string margin_note(const MarginFindings& found)
{
    return "Each surface is moved by itself, as it is or, as a normal offset, every facet along "
           "its normal; found to " +
           mm(margin_accuracy) + " on exact areas, looking every " +
           angle_words(found.wanted.step) +
           ". What a mm loses holds about where the surface is drawn: further on another surface "
           "may "
           "take over, such as one that borders on it and stays. Meshes count as exact: what they "
           "may be off comes on top.";
}

std::string margin_sentences(const MarginFindings& found, const Study& study,
                             const TextStyle& style)
{
    std::string text;
    for (const CheckMargins& check : found.checks)
        text += wrapped(margin_sentence(check, found, study), style.columns) + "\n";
    return text;
}

std::string margin_words(const MarginFindings& found, const Study& study, const TextStyle& style)
{
    std::string text;
    for (const CheckMargins& check : found.checks) {
        text += wrapped(margin_sentence(check, found, study), style.columns) + "\n";
        if (!check.margins.empty())
            text += check_table(check, found, study);
        text += "\n";
    }
    if (!found.idle.empty())
        text += wrapped(margin_idle_words(found, study), style.columns) + "\n";
    text += wrapped(margin_note(found), style.columns);
    return text + "\n\n" + rule_sources_words(asked_rows(study, found.wanted.checks), style) +
           "\n" + wrapped(caution, style.columns) + "\n";
}

} // namespace glim
