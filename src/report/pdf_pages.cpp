#include "report/pdf_pages.h"

#include "report/page_colours.h"
#include "report/page_pieces.h"
#include "words/text_block.h"

#include <algorithm>

namespace glim {

namespace {

// A4 (ISO 216), 210 x 297 mm, in points.
constexpr double page_width = 595.276;
constexpr double page_height = 841.89;
constexpr double side = 47.6; // leaves the 500 points that wide charts take
constexpr double top = 58;
constexpr double bottom = 54;
constexpr double head_y = 30;
constexpr double foot_y = page_height - 36;
constexpr double edge_size = 7.5;
constexpr double title_size = 19;

constexpr PageRoom room{page_width - 2 * side, page_height - top - bottom};

Text edge_text(const std::string& words, Align align)
{
    return {.words = words, .size = edge_size, .colour = quiet_ink, .align = align};
}

/// The title of the first page, as a piece like any other.
std::vector<Piece> title_pieces(const Document& document)
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
         .width = room.width,
         .most_lines = 4});
    if (!document.date.empty())
        add({.words = document.date, .size = 9.5, .colour = quiet_ink, .width = room.width});
    return pieces;
}

void draw_edges(Canvas& canvas, const Document& document, std::size_t page, std::size_t pages)
{
    Text title = edge_text(harmless(document.title), Align::left);
    title.width = room.width;
    title.most_lines = 1;
    if (page > 0) {
        canvas.text({side, head_y}, title);
        const double y = head_y + 13;
        canvas.stroke(segment({side, y}, {page_width - side, y}),
                      {.colour = rule_line, .width = 0.5});
    }
    canvas.text({page_width - side, foot_y},
                edge_text("page " + std::to_string(page + 1) + " of " + std::to_string(pages),
                          Align::right));
    if (!document.date.empty())
        canvas.text({side, foot_y}, edge_text(document.date, Align::left));
}

std::vector<Bookmark> bookmarks_of(const std::vector<PagePieces>& pages)
{
    std::vector<Bookmark> bookmarks;
    int level = 0;
    for (std::size_t page = 0; page < pages.size(); ++page)
        for (const PlacedPiece& placed : pages[page]) {
            if (placed.piece->bookmark_level == 0)
                continue;
            level = std::min(placed.piece->bookmark_level, level + 1);
            bookmarks.push_back({level, placed.piece->bookmark, page, top + placed.y});
        }
    return bookmarks;
}

} // namespace

std::string pdf_pages(const Document& document, const Progress& progress)
{
    std::vector<Piece> pieces = title_pieces(document);
    for (Piece& piece : page_pieces(document, room))
        pieces.push_back(std::move(piece));
    const std::vector<PagePieces> pages = flowed(pieces, room.height);

    std::vector<Drawing> drawings;
    for (std::size_t page = 0; page < pages.size(); ++page)
        drawings.push_back({page_width, page_height, [&, page](Canvas& canvas) {
                                for (const PlacedPiece& placed : pages[page])
                                    placed.piece->draw(canvas, {side, top + placed.y});
                                draw_edges(canvas, document, page, pages.size());
                                if (progress)
                                    progress(page + 1, pages.size());
                            }});
    return pdf_of(drawings, bookmarks_of(pages), {document.title, document.date});
}

} // namespace glim
