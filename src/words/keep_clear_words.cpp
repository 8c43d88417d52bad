#include "words/keep_clear_words.h"

#include "model/rule.h"
#include "remedy/way_to_space.h"
#include "words/bearing_words.h"
#include "words/citation_words.h"
#include "words/headroom_words.h"
#include "words/name_list.h"
#include "words/numbers.h"
#include "words/ways_words.h"

#include <algorithm>

namespace glim {

namespace {

constexpr int indent = 2;
constexpr double mm3_in_litre = 1e6;

std::string mm(Length length) { return rounded(in_mm(length), 2) + " mm"; }

std::string litres(Volume volume) { return rounded(in_mm3(volume) / mm3_in_litre, 2) + " litres"; }

std::string at(const Point& p)
{
    return "(" + rounded(p.x(), 1) + ", " + rounded(p.y(), 1) + ", " + rounded(p.z(), 1) + ")";
}

std::string_view words_of(FavouredEdge edge)
{
    return std::find_if(favoured_edge_words.begin(), favoured_edge_words.end(),
                        [&](const FavouredEdgeWord& row) { return row.edge == edge; })
        ->words;
}

std::string chosen_words(const KeepClearSpace& space)
{
    std::vector<std::string> each;
    for (std::size_t i = 0; i < space.by_edge.size(); ++i)
        each.push_back(std::string(favoured_edge_words[i].key) + " about " +
                       litres(space.by_edge[i]));
    return each.empty() ? "" : ", as the one of least volume (" + name_list(each) + ")";
}

/// "453.8 mm2 from 45 deg inboard, 15 deg up (H -45, V 15), where 1250 mm2 are needed"
std::string least_words(const KeepClearSpace& space)
{
    return area_words(space.least.shown) + " from " +
           bearing_words(space.least.from, {space.row.axis, space.side}) + " (" +
           bearing_figures(space.least.from) + "), where " + area_words(space.needed) +
           " are needed";
}

std::string kept_words(const KeepClearSpace& space)
{
    if (!space.kept)
        return "all of the lamp that faces a direction, in each of the field";
    std::string words = space.shows_too_little ? "too small: " + least_words(space) + "; " : "";
    words += std::string(words_of(*space.kept)) + " of the lamp, so much as shows " +
             (space.needed > Area() ? area_words(space.needed) : "the share asked") +
             " in each direction" + chosen_words(space);
    if (space.too_small > 0)
        words += "; in " + std::to_string(space.too_small) + " of " +
                 counted(space.pieces, "piece") +
                 " of the field the whole lamp shows less than that, and there it is kept whole";
    return words;
}

std::string size_words(const KeepClearSpace& space)
{
    std::string words = litres(space.volume) + ", " + counted(space.mesh.facets.size(), "facet");
    if (space.bodies > 1)
        words += " in " + counted(space.bodies, "body") + " that may run into each other";
    return words + (space.within ? "; no point of it was found farther than " + mm(*space.within) +
                                       " outside the space itself, and none lies inside"
                                 : "; it holds all of the space, but parts of it stand farther out "
                                   "than `chord_error`: ask for a coarser one, or end it nearer");
}

std::string name_of(const Intrusion& intrusion, const Study& study)
{
    return quoted(study.surfaces[intrusion.surface.surface].name +
                  (intrusion.surface.twin ? " (mirrored)" : ""));
}

/// The first of the lamps that are too small for their row; empty where none is.
std::string too_small_words(const KeepClear& found)
{
    const KeepClearSpace* first = nullptr;
    std::size_t all = 0;
    for (const KeepClearSpace& space : found.spaces)
        if (space.shows_too_little && !space.spared) {
            first = first ? first : &space;
            ++all;
        }
    if (!first)
        return {};
    return "Too small: with nothing in the way the lamp shows " + least_words(*first) + " (" +
           space_label(*first) + ")" +
           (all > 1 ? "; " + counted(all - 1, "more space") + " alike" : "") +
           ". No space kept clear can make up for that.";
}

/// Which spaces need not be kept because another way is.
std::string spared_words(const KeepClear& found, const std::string& check)
{
    std::vector<std::string> rows;
    for (const KeepClearSpace& space : found.spaces)
        if (space.check == check && space.spared)
            rows.push_back(quoted(space_label(space)));
    return rows.empty() ? std::string()
                        : " Not needed, because another way is clear: " + name_list(rows) + ".";
}

std::string without_words(const KeepClear& found)
{
    return "no space is asked for by " + name_list(found.without_space) +
           ": rows of light or of place, or rows that do not apply";
}

} // namespace

std::string intrusion_depth_words(Length depth)
{
    return mm(depth) + (depth >= deepest_intrusion ? " or more" : "");
}

std::string space_label(const KeepClearSpace& space)
{
    return space.check + ", " + space.row.id + ", " + space.lamp +
           (space.twin ? " (mirrored)" : "");
}

std::string intrusion_words(const Intrusion& intrusion, const Study& study)
{
    return name_of(intrusion, study) + " by up to " + intrusion_depth_words(intrusion.depth) +
           " along its normal, deepest at " + at(intrusion.deepest) + "; from " +
           at(intrusion.box.least) + " to " + at(intrusion.box.most) +
           "; it hides some of the "
           "lamp in " +
           share_words(intrusion.share_of_field, 1) + " of the field";
}

std::string keep_clear_sentence(const KeepClear& found, const Study& study)
{
    const std::string too_small = too_small_words(found);
    const KeepClearSpace* worst = nullptr;
    for (const KeepClearSpace& space : found.spaces)
        if (!space.intrusions.empty() && !space.spared &&
            (!worst || space.intrusions.front().depth > worst->intrusions.front().depth))
            worst = &space;
    const std::string before = too_small.empty() ? "" : too_small + " ";
    if (worst)
        return before + "Not clear: " + name_of(worst->intrusions.front(), study) + " reaches " +
               intrusion_depth_words(worst->intrusions.front().depth) + " into the space of " +
               space_label(*worst) + ".";
    if (!too_small.empty())
        return before + "Nothing of the study reaches into a space that has to stay empty.";
    const auto needed = std::count_if(found.spaces.begin(), found.spaces.end(),
                                      [](const KeepClearSpace& space) { return !space.spared; });
    return "Clear: nothing of the study reaches into " +
           (needed == 1 ? std::string("the space that has to stay empty.")
                        : "the " + std::to_string(needed) + " spaces that have to stay empty.");
}

std::vector<std::string> keep_clear_notes(const KeepClear& found)
{
    std::vector<std::string> notes;
    for (const ChoiceOfSpaces& choice : found.choices)
        notes.push_back("Of " + quoted(choice.check) + " one of these ways is enough: " +
                        ways_words(choice.ways) + "." + spared_words(found, choice.check));
    if (std::any_of(found.spaces.begin(), found.spaces.end(), [](const KeepClearSpace& space) {
            return space.kept && !space.intrusions.empty();
        }))
        notes.push_back("A surface in the space of a row of area is not yet a failure: the space "
                        "is the least for one chosen part of the lamp, and another part may be in "
                        "view past it. `cornerglim check` decides that.");
    return notes;
}

std::vector<Labelled> space_entries(const KeepClearSpace& space)
{
    return {{"row", space.row.title},
            {"field", field_words(space.field, {space.row.axis, space.side}) +
                          (space.relaxed ? " (relaxed by a condition of the row)" : "")},
            {"kept in view", kept_words(space)},
            {"space", size_words(space)},
            {"figures", citation_words(space.row.citation)}};
}

std::string keep_clear_words(const KeepClear& found, const std::vector<Headroom>& headroom,
                             const Study& study, const TextStyle& style)
{
    std::string text = wrapped(keep_clear_sentence(found, study), style.columns) + "\n";
    for (const std::string& note : keep_clear_notes(found))
        text += wrapped(note, style.columns) + "\n";
    for (const KeepClearSpace& space : found.spaces) {
        std::vector<Labelled> entries = space_entries(space);
        for (const Intrusion& intrusion : space.intrusions)
            entries.push_back({&intrusion == &space.intrusions.front() ? "reaching in" : "",
                               intrusion_words(intrusion, study)});
        if (space.intrusions.empty())
            entries.push_back({"reaching in", "nothing"});
        text += "\n" + wrapped(space_label(space), style.columns) + "\n" +
                labelled_block(entries, indent, style);
    }
    if (!headroom.empty())
        text += "\n" + headroom_words(headroom, found, study, style);
    if (!found.without_space.empty())
        text += "\n" + wrapped(without_words(found), style.columns) + "\n";
    return text + "\n" + wrapped(caution, style.columns) + "\n";
}

} // namespace glim
