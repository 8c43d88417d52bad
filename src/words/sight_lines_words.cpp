#include "words/sight_lines_words.h"

#include "model/rule.h"
#include "words/bearing_words.h"
#include "words/citation_words.h"
#include "words/name_list.h"
#include "words/numbers.h"
#include "words/ways_words.h"

#include <algorithm>

namespace glim {

namespace {

constexpr int indent = 2;
/// Of the places across, so many are told on a terminal; the CSV has all.
constexpr std::size_t told_places = 8;

std::string mm(Length length) { return rounded(in_mm(length), 0) + " mm"; }

std::string_view words_of(FavouredEdge edge)
{
    return std::find_if(favoured_edge_words.begin(), favoured_edge_words.end(),
                        [&](const FavouredEdgeWord& row) { return row.edge == edge; })
        ->words;
}

std::string face_words(const SightRow& row)
{
    const std::string worst = bearing_words(row.worst, {row.row.axis, Side::left}) + " (" +
                              bearing_figures(row.worst) + ")";
    std::string words = (row.lens_too_small() ? "too small: " : "") + area_words(row.least_shown) +
                        " in view from " + worst + ", with nothing in the way";
    if (row.needed == Area())
        return words;
    words += "; " + area_words(row.needed) + " needed: ";
    if (!row.least_face)
        return words + "the lens turns away there, and no size of it is enough";
    return words + "a lens of this shape needs a face of " + area_words(*row.least_face);
}

/// Of a mesh: how much of its file was taken.
std::string taken_words(const LampSketch& sketch, const SightLines& lines)
{
    return sketch.facets_of_file == 0
               ? std::string()
               : ": " + std::to_string(lines.facets) + " of the " +
                     counted(sketch.facets_of_file, "facet") + " of its file";
}

} // namespace

std::string sight_lines_sentence(const SightLines& lines)
{
    std::string words;
    for (const SightRow& row : lines.rows)
        if (row.lens_too_small() && !row.spared)
            words += (words.empty() ? "" : " ") + std::string("Too small: from ") +
                     bearing_words(row.worst, {row.row.axis, Side::left}) + " (" +
                     bearing_figures(row.worst) + ") the lens shows " +
                     area_words(row.least_shown) + ", with nothing in the way, where " +
                     quoted(row.row.id) + " needs " + area_words(row.needed) + ".";
    std::vector<std::string> places;
    for (const PlaceRoom& room : lines.places)
        if (!room.keeps())
            places.push_back(quoted(room.row));
    if (!places.empty())
        words += (words.empty() ? "" : " ") + std::string("Out of place: ") + name_list(places) +
                 (places.size() == 1 ? " is not kept." : " are not kept.");
    if (!words.empty())
        return words;
    if (std::none_of(lines.rows.begin(), lines.rows.end(),
                     [](const SightRow& row) { return row.needed > Area(); }))
        return "In place: the lens stands where the table lets it. No row drawn here asks for an "
               "area in view.";
    return "Large enough and in place: with nothing in the way, the lens shows what is needed, and "
           "it stands where the table lets it.";
}

std::string sight_choice_words(const SightLines& lines)
{
    std::string words;
    for (const WaysOfRule& ways : lines.choices)
        words += (words.empty() ? "" : " ") + std::string("One of these ways is enough: ") +
                 ways_words(ways) + ".";
    return words;
}

std::string left_open_words(const SightLines& lines)
{
    std::string words;
    for (const RowLeftOpen& row : lines.left_open)
        words += (words.empty() ? "" : " ") + std::string("Not drawn: ") + quoted(row.row) +
                 ", which hangs on the category of the " +
                 (row.hangs_on == Measured::lamp_category ? "lamp; `category` of [lamp]"
                                                          : "vehicle; `category` of [vehicle]") +
                 " is not said.";
    return words;
}

std::vector<Labelled> sketch_entries(const LampSketch& sketch, const SightLines& lines)
{
    return {{"lens", mm(sketch.width) + " across, " + mm(sketch.height) + " high, face of " +
                         area_words(lines.face) + taken_words(sketch, lines)},
            {"place", "centre " + mm(sketch.lateral) + " from the median plane, " +
                          mm(sketch.above) + " above the ground"},
            {"vehicle", mm(*sketch.study.vehicle.overall_width) + " wide"}};
}

std::vector<Labelled> sight_row_entries(const SightRow& row)
{
    return {{"row", row.row.title},
            {"field", field_words(row.field, {row.row.axis, Side::left}) +
                          (row.relaxed ? " (relaxed by a condition of the row)" : "")},
            {"kept in view",
             !row.kept ? "the whole lens"
             : row.lens_too_small()
                 ? std::string(words_of(*row.kept)) +
                       " of the lens, so much as is needed; the whole lens "
                       "where it shows less than that"
                 : std::string(words_of(*row.kept)) + " of the lens, so much as is needed"},
            {"least lens", face_words(row)},
            {"figures", citation_words(row.row.citation)}};
}

std::string place_room_words(const PlaceRoom& room)
{
    const bool of_height = room.of == PlaceRoom::Of::height;
    std::string words = "centre ";
    if (room.least && room.most)
        words += "from " + mm(*room.least) + " to " + mm(*room.most);
    else if (room.least)
        words += "at least " + mm(*room.least);
    else if (room.most)
        words += "at most " + mm(*room.most);
    words += of_height ? " above the ground" : " from the median plane";
    return words + "; it is at " + mm(room.is) + (room.keeps() ? "" : ": not kept");
}

std::string nose_words(const NoseReach& reach)
{
    return "at y = " + rounded(in_mm(reach.lateral), 0) + ": " +
           (reach.ahead ? "up to " + mm(*reach.ahead) : "as far as drawn");
}

std::string sight_provenance_words(const SightLines& lines)
{
    const auto unverified =
        std::count_if(lines.rows.begin(), lines.rows.end(), [](const SightRow& row) {
            return row.row.citation.provenance != Provenance::read;
        });
    return std::to_string(unverified) + " of " + counted(lines.rows.size(), "row") +
           " were not read in the published text: look up each figure in the edition in force "
           "before anybody relies on it.";
}

std::string sight_lines_words(const SightLines& lines, const LampSketch& sketch,
                              const TextStyle& style)
{
    const std::string title = sketch.study.title.empty() ? "Sight lines" : sketch.study.title;
    std::string text = wrapped(sight_lines_sentence(lines), style.columns) + "\n";
    if (const std::string choice = sight_choice_words(lines); !choice.empty())
        text += wrapped(choice, style.columns) + "\n";
    if (const std::string open = left_open_words(lines); !open.empty())
        text += wrapped(open, style.columns) + "\n";
    text += "\n" + wrapped(title, style.columns) + "\n" +
            labelled_block(sketch_entries(sketch, lines), indent, style);
    for (const SightRow& row : lines.rows) {
        std::vector<Labelled> entries = sight_row_entries(row);
        const std::size_t stride = std::max<std::size_t>(1, row.nose.size() / told_places);
        for (std::size_t i = 0; i < row.nose.size(); i += stride)
            entries.push_back({i == 0 ? "nose may reach" : "",
                               nose_words(row.nose[i]) + (i == 0 ? " ahead of the lens" : "")});
        text += "\n" + wrapped(row.row.id, style.columns) + "\n" +
                labelled_block(entries, indent, style);
    }
    std::vector<Labelled> places;
    for (const PlaceRoom& room : lines.places) {
        places.push_back({room.row, place_room_words(room)});
        places.push_back({"", citation_words(room.citation)});
    }
    if (!places.empty())
        text += "\nWhere the lens may stand\n" + labelled_block(places, indent, style);
    if (!lines.without_space.empty())
        text += "\n" +
                wrapped("No limits are drawn for " + name_list(lines.without_space) +
                            ": rows of light or of place, or rows that do not apply.",
                        style.columns) +
                "\n";
    return text + "\n" + wrapped(sight_provenance_words(lines), style.columns) + "\n" +
           wrapped(caution, style.columns) + "\n";
}

} // namespace glim
