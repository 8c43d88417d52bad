#include "report/pdf_pages.h"

#include "report/page_colours.h"
#include "report/page_pieces.h"
#include "words/text_block.h"

#include <algorithm>

namespace glim {

namespace {

// A4 (ISO 216), 210 x 297 mm, in points.
constexpr double short_side = 595.276;
constexpr double long_side = 841.89;
constexpr double edge_size = 7.5;
constexpr double title_size = 19;
/// A sheet is tried this much smaller each time.
constexpr double sheet_step = 0.98;

/// A page and what is left free around its room, points.
struct Paper {
    double width, height;
    double side, top, bottom;
    double head_y, foot_y; ///< of running words; the foot's from the bottom

    PageRoom room() const { return {width - 2 * side, height - top - bottom}; }
    /// So much larger: what is laid out on it and scaled down to the page is smaller.
    Paper enlarged(double by) const
    {
        return {by * width,  by * height, by * side,  by * top,
                by * bottom, by * head_y, by * foot_y};
    }
};
/// Leaves the 500 points that wide charts take.
constexpr Paper upright{short_side, long_side, 47.6, 58, 54, 30, 36};
constexpr Paper across{long_side, short_side, 36, 32, 36, 14, 26};

Text edge_text(const std::string& words, Align align)
{
    return {.words = words, .size = edge_size, .colour = quiet_ink, .align = align};
}

/// The title of the first page, as a piece like any other.
std::vector<Piece> title_pieces(const Document& document, double width)
{
    std::vector<Piece> pieces;
    const auto add = [&](const Text& text) {
        pieces.push_back(
            {.height = extent_of(text).height + 4,
             .draw = [text](Canvas& canvas, const Point2& at) { canvas.text(at, text); },
             .keep_with_next = true});
    };
    add({.words = harmless(document.title),
         .size = title_size,
         .bold = true,
         .colour = heading_ink,
         .width = width,
         .most_lines = 4});
    if (!document.date.empty())
        add({.words = document.date, .size = 9.5, .colour = quiet_ink, .width = width});
    return pieces;
}

/// Which page of how many.
struct PageNumber {
    std::size_t page, pages;
};

void draw_edges(Canvas& canvas, const Document& document, const Paper& paper,
                const PageNumber& number)
{
    Text title = edge_text(harmless(document.title), Align::left);
    title.width = paper.room().width;
    title.most_lines = 1;
    if (number.page > 0) {
        canvas.text({paper.side, paper.head_y}, title);
        const double y = paper.head_y + 13;
        canvas.stroke(segment({paper.side, y}, {paper.width - paper.side, y}),
                      {.colour = rule_line, .width = 0.5});
    }
    const double foot_y = paper.height - paper.foot_y;
    canvas.text(
        {paper.width - paper.side, foot_y},
        edge_text("page " + std::to_string(number.page + 1) + " of " + std::to_string(number.pages),
                  Align::right));
    if (!document.date.empty())
        canvas.text({paper.side, foot_y}, edge_text(document.date, Align::left));
}

/// A document laid out on paper that is scaled down to the page.
struct Layout {
    Paper paper;
    double scale = 1;
    std::vector<Piece> pieces;
    std::vector<PagePieces> pages; ///< point into `pieces`
};

Layout laid_out(const Document& document, const Paper& page, double scale)
{
    Layout layout{page.enlarged(1 / scale), scale, {}, {}};
    const PageRoom room = layout.paper.room();
    layout.pieces = title_pieces(document, room.width);
    for (Piece& piece : page_pieces(document, room))
        layout.pieces.push_back(std::move(piece));
    layout.pages = flowed(layout.pieces, room.height);
    return layout;
}

Layout laid_out(const Document& document)
{
    if (!document.is_sheet)
        return laid_out(document, upright, 1);
    double scale = 1;
    Layout layout = laid_out(document, across, scale);
    while (layout.pages.size() > 1 && scale * sheet_step >= least_sheet_scale) {
        scale *= sheet_step;
        layout = laid_out(document, across, scale);
    }
    return layout;
}

std::vector<Bookmark> bookmarks_of(const Layout& layout)
{
    std::vector<Bookmark> bookmarks;
    int level = 0;
    for (std::size_t page = 0; page < layout.pages.size(); ++page)
        for (const PlacedPiece& placed : layout.pages[page]) {
            if (placed.piece->bookmark_level == 0)
                continue;
            level = std::min(placed.piece->bookmark_level, level + 1);
            bookmarks.push_back({level, placed.piece->bookmark, page,
                                 layout.scale * (layout.paper.top + placed.y)});
        }
    return bookmarks;
}

} // namespace

std::string pdf_pages(const Document& document, const Progress& progress)
{
    const Layout layout = laid_out(document);
    const Paper& paper = layout.paper;
    const double width = layout.scale * paper.width, height = layout.scale * paper.height;
    std::vector<Drawing> drawings;
    for (std::size_t page = 0; page < layout.pages.size(); ++page) {
        const auto draw = [&, page](Canvas& canvas) {
            for (const PlacedPiece& placed : layout.pages[page])
                placed.piece->draw(canvas, {paper.side, paper.top + placed.y});
            draw_edges(canvas, document, paper, {page, layout.pages.size()});
            if (progress)
                progress(page + 1, layout.pages.size());
        };
        drawings.push_back(
            {width, height, [&, draw, width, height](Canvas& canvas) {
                 if (layout.scale == 1)
                     draw(canvas);
                 else
                     canvas.place({paper.width, paper.height, draw}, {0, 0, width, height});
             }});
    }
    return pdf_of(drawings, bookmarks_of(layout), {document.title, document.date});
}

} // namespace glim
