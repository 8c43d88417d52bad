#include "report/write_sight_lines.h"

#include "drawing/sight_view.h"
#include "report/html_page.h"
#include "report/pdf_pages.h"
#include "report/sight_lines_json.h"
#include "report/typeset_document.h"
#include "words/capitalised.h"
#include "words/citation_words.h"
#include "words/numbers.h"
#include "words/origin_words.h"
#include "words/sight_lines_words.h"

namespace glim {

namespace {

/// Of the places across, so many stand on the page; the CSV has all.
constexpr std::size_t places_on_page = 10;
/// All three side by side on a sheet that lies across, plan and front alike.
constexpr SightViewSize wide_view{.width = 300, .most_height = 170};
constexpr SightViewSize side_view{.width = 145, .most_height = 170};

Terms terms_of(const std::vector<Labelled>& entries)
{
    Terms terms;
    for (const Labelled& entry : entries)
        terms.terms.push_back({entry.label, {entry.text}});
    return terms;
}

/// "y 600: 53, y 450: 203 ...", every few places.
std::string nose_line(const SightRow& row)
{
    std::string words = "mm ahead of the lens at its heights, y from the median plane: ";
    const std::size_t stride = std::max<std::size_t>(1, row.nose.size() / places_on_page);
    for (std::size_t i = 0; i < row.nose.size(); i += stride) {
        const NoseReach& reach = row.nose[i];
        words += (i == 0 ? "y " : "; y ") + rounded(in_mm(reach.lateral), 0) + ": " +
                 (reach.ahead ? rounded(in_mm(*reach.ahead), 0) : "free as far as drawn");
        if (!reach.ahead)
            break; // and further across it is so too
    }
    return words + ".";
}

std::string page_caption(SightView view)
{
    switch (view) {
    case SightView::plan:
        return "no body inside the outline, at the heights of the lens.";
    case SightView::front:
        return "no body inside the section, so far ahead of the lens.";
    case SightView::side:
        break;
    }
    return "below and above the outline bodies are free, wherever across.";
}

/// "Lens: 143 mm across. Place: ..."
std::string sketch_line(const LampSketch& sketch, const SightLines& lines)
{
    std::string words;
    for (const Labelled& entry : sketch_entries(sketch, lines))
        words += (words.empty() ? "" : " ") + capitalised(entry.label) + ": " + entry.text + ".";
    return words;
}

Figures views_of(const SightLines& lines, const LampSketch& sketch)
{
    Figures views;
    for (const SightView view : {SightView::plan, SightView::front, SightView::side}) {
        Figure figure =
            sight_view(lines, sketch, view, view == SightView::side ? side_view : wide_view);
        figure.caption = figure.title + ": " + page_caption(view);
        views.figures.push_back(std::move(figure));
    }
    return views;
}

Document document_of(const SightLines& lines, const LampSketch& sketch, const std::string& command)
{
    std::string sentence = sight_lines_sentence(lines);
    if (const std::string choice = sight_choice_words(lines); !choice.empty())
        sentence += " " + choice;
    if (const std::string open = left_open_words(lines); !open.empty())
        sentence += " " + open;
    std::vector<Block> blocks{Paragraph{sentence, lines.kept() ? Tone::met : Tone::not_met, true},
                              Paragraph{sketch_line(sketch, lines)}, Notice{std::string(caution)},
                              views_of(lines, sketch)};
    for (const SightRow& row : lines.rows) {
        blocks.push_back(Heading{2, row.row.id});
        Terms terms = terms_of(sight_row_entries(row));
        if (!row.nose.empty())
            terms.terms.push_back({"nose may reach", {nose_line(row)}});
        blocks.push_back(std::move(terms));
    }
    if (!lines.places.empty()) {
        blocks.push_back(Heading{2, "Where the lens may stand"});
        Terms terms;
        for (const PlaceRoom& room : lines.places)
            terms.terms.push_back(
                {room.row, {place_room_words(room) + ". " + citation_words(room.citation)}});
        blocks.push_back(std::move(terms));
    }
    blocks.push_back(Paragraph{sight_provenance_words(lines) + " Sketch: " + sketch.study.file +
                               ". Command: " + command});
    const std::string& of = sketch.study.title;
    return typeset_document(
        {of.empty() ? "Sight lines of a lamp" : "Sight lines: " + of, "", std::move(blocks), true},
        {sketch.study.file, command});
}

} // namespace

void write_sight_lines(const SightLines& lines, const LampSketch& sketch,
                       const std::string& command, NewFolder& folder)
{
    for (const SightViewWord& view : sight_view_words) {
        const std::string name(view.key);
        folder.put(name + ".svg", svg_of(sight_view(lines, sketch, view.view).drawing));
        folder.put(name + ".dxf", view_dxf(lines, view.view));
    }
    const Document document = document_of(lines, sketch, command);
    folder.put("sight-lines.html", html_page(document));
    folder.put("sight-lines.pdf", pdf_pages(document));
    folder.put("sight-lines.json", text_of(sight_lines_json(lines, sketch, command)));
    folder.put("sight-lines.txt",
               sight_lines_words(lines, sketch) + "\n" +
                   labelled_block(origin_entries({sketch.study.file, sketch.study.title, command}),
                                  0, {}));
    folder.put("curves.csv", curves_csv(lines));
    folder.put("nose.csv", nose_csv(lines));
    folder.commit();
}

} // namespace glim
