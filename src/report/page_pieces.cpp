#include "report/page_pieces.h"

#include "report/page_colours.h"
#include "report/table_pieces.h"
#include "report/text_chunks.h"
#include "words/text_block.h"

#include <algorithm>
#include <utility>

namespace glim {

namespace {

constexpr double body_size = 9.5;
constexpr double lead_size = 11;
constexpr double caption_size = 8;
constexpr double space = 6; ///< between blocks
constexpr double bullet_indent = 12;
constexpr double notice_padding = 8;
constexpr double label_width = 96;
constexpr double label_gap = 10;
constexpr double figure_gap = 12;

struct HeadingLook {
    double size, above, below;
};

HeadingLook look_of(int level)
{
    if (level == 1)
        return {15, 20, 6};
    return level == 2 ? HeadingLook{12, 16, 5} : HeadingLook{10.5, 12, 4};
}

Piece text_piece(Text text, double above, double left = 0)
{
    const double height = extent_of(text).height;
    return {.above = above,
            .height = height,
            .draw = [text = std::move(text), left](Canvas& canvas, const Point2& at) {
                canvas.text({at.x() + left, at.y()}, text);
            }};
}

class PieceMaker {
public:
    explicit PieceMaker(const PageRoom& room) : room_(room) {}

    void operator()(const Heading& heading)
    {
        const HeadingLook look = look_of(heading.level);
        Text text = body(heading.text, room_.width);
        text.size = look.size;
        text.bold = true;
        text.colour = heading_ink;
        Piece piece = text_piece(text, look.above);
        piece.height += look.below;
        piece.keep_with_next = true;
        piece.bookmark_level = heading.level;
        piece.bookmark = harmless(heading.text);
        add(std::move(piece));
    }

    void operator()(const Paragraph& paragraph)
    {
        Text text = body(paragraph.text, room_.width);
        text.size = paragraph.is_lead ? lead_size : body_size;
        text.bold =
            paragraph.is_lead || paragraph.tone == Tone::not_met || paragraph.tone == Tone::open;
        text.colour = ink_of(paragraph.tone);
        add_text(text, space);
    }

    void operator()(const BulletList& list)
    {
        for (const std::string& item : list.items) {
            const Text text = body(item, room_.width - bullet_indent);
            bool is_first = true;
            for (const Text& chunk : text_chunks(text, room_.height)) {
                Piece piece = text_piece(chunk, space / 2, bullet_indent);
                if (std::exchange(is_first, false))
                    piece.draw = with_bullet(piece.draw);
                add(std::move(piece));
            }
        }
    }

    void operator()(const Terms& terms)
    {
        for (const Term& term : terms.terms)
            for (std::size_t i = 0; i < term.lines.size(); ++i)
                add_term(i == 0 ? term.label : "", term.lines[i]);
    }

    void operator()(const Table& table)
    {
        for (Piece& piece : table_pieces(table, room_))
            add(std::move(piece));
    }

    void operator()(const Figures& figures)
    {
        const bool pictures = std::all_of(figures.figures.begin(), figures.figures.end(),
                                          [](const Figure& f) { return f.is_picture; });
        if (pictures && figures.figures.size() > 1) {
            for (const Figure& figure : figures.figures)
                add(captioned_aside(figure));
            return;
        }
        std::vector<const Figure*> row;
        double taken = 0;
        for (const Figure& figure : figures.figures) {
            const double width = scaled_width(figure);
            if (!row.empty() && taken + figure_gap + width > room_.width) {
                add(figure_row(row));
                row.clear();
                taken = 0;
            }
            row.push_back(&figure);
            taken += (row.size() > 1 ? figure_gap : 0) + width;
        }
        if (!row.empty())
            add(figure_row(row));
    }

    void operator()(const Notice& notice)
    {
        const Text text = body(notice.text, room_.width - 2 * notice_padding);
        for (const Text& chunk : text_chunks(text, room_.height - 2 * notice_padding))
            add(notice_piece(chunk));
    }

    void operator()(const PageBreak&) { break_page_ = true; }

    std::vector<Piece> take() { return std::move(pieces_); }

private:
    static Text body(const std::string& words, double width)
    {
        return {.words = harmless(words), .size = body_size, .colour = ink, .width = width};
    }

    void add(Piece piece)
    {
        piece.begins_page = std::exchange(break_page_, false);
        pieces_.push_back(std::move(piece));
    }

    void add_text(const Text& text, double above)
    {
        for (const Text& chunk : text_chunks(text, room_.height))
            add(text_piece(chunk, above));
    }

    static std::function<void(Canvas&, const Point2&)>
    with_bullet(std::function<void(Canvas&, const Point2&)> draw)
    {
        return [draw = std::move(draw)](Canvas& canvas, const Point2& at) {
            canvas.text(at, {.words = "\u2022", .size = body_size, .colour = quiet_ink});
            draw(canvas, at);
        };
    }

    void add_term(const std::string& label, const std::string& line)
    {
        Text name = body(label, label_width);
        name.colour = quiet_ink;
        const double left = label_width + label_gap;
        for (const Text& chunk : text_chunks(body(line, room_.width - left), room_.height)) {
            Piece piece = text_piece(chunk, name.words.empty() ? space / 4 : space / 2, left);
            if (!name.words.empty()) {
                piece.height = std::max(piece.height, extent_of(name).height);
                piece.draw = [name, draw = piece.draw](Canvas& canvas, const Point2& at) {
                    canvas.text(at, name);
                    draw(canvas, at);
                };
            }
            name.words.clear();
            add(std::move(piece));
        }
    }

    static Piece notice_piece(const Text& text)
    {
        const double height = extent_of(text).height + 2 * notice_padding;
        return {.above = space * 1.5,
                .height = height,
                .draw = [text, height](Canvas& canvas, const Point2& at) {
                    const double width = *text.width + 2 * notice_padding;
                    canvas.fill(path_of({at.x(), at.y(), width, height}), {notice_paper});
                    canvas.fill(path_of({at.x(), at.y(), 3, height}), {notice_line});
                    canvas.text({at.x() + notice_padding, at.y() + notice_padding}, text);
                }};
    }

    /// At most as wide as the page, and so that its caption fits below it.
    double scaled_width(const Figure& figure) const
    {
        constexpr double most_of_height = 0.82;
        const double scale = std::min({1.0, room_.width / figure.drawing.width,
                                       most_of_height * room_.height / figure.drawing.height});
        return figure.drawing.width * scale;
    }

    static Text caption_text(const Figure& figure, double width)
    {
        Text text = body(caption_of(figure), width);
        text.size = caption_size;
        text.colour = quiet_ink;
        // What it shows is in the tables too; a caption longer than this belongs there.
        text.most_lines = 16;
        return text;
    }

    /// A picture of several, smaller, its caption to the right of it: so three go on a page.
    Piece captioned_aside(const Figure& figure) const
    {
        constexpr double share = 0.64; // of the width; letters of 8 points stay above 6
        const double scale = std::min(1.0, share * room_.width / figure.drawing.width);
        const double width = figure.drawing.width * scale;
        const double height = figure.drawing.height * scale;
        const Text caption = caption_text(figure, room_.width - width - figure_gap);
        return {.above = space * 1.5,
                .height = std::max(height, extent_of(caption).height),
                .draw = [&figure, width, height, caption](Canvas& canvas, const Point2& at) {
                    canvas.place(figure.drawing, {at.x(), at.y(), width, height});
                    canvas.text({at.x() + width + figure_gap, at.y()}, caption);
                }};
    }

    Piece figure_row(const std::vector<const Figure*>& row) const
    {
        struct Framed {
            const Figure* figure;
            Rect where;
            Text caption;
        };
        std::vector<Framed> framed;
        double x = 0, height = 0;
        for (const Figure* figure : row) {
            const double width = scaled_width(*figure);
            const double high = width * figure->drawing.height / figure->drawing.width;
            // A picture alone in its row gives its caption all of the width.
            const Text caption = caption_text(*figure, row.size() == 1 ? room_.width : width);
            framed.push_back({figure, {x, 0, width, high}, caption});
            x += width + figure_gap;
            height = std::max(height, high + space / 2 + extent_of(caption).height);
        }
        return {.above = space * 1.5,
                .height = height,
                .draw = [framed](Canvas& canvas, const Point2& at) {
                    for (const Framed& f : framed) {
                        const Rect& r = f.where;
                        canvas.place(f.figure->drawing,
                                     {at.x() + r.x, at.y() + r.y, r.width, r.height});
                        canvas.text({at.x() + r.x, at.y() + r.bottom() + space / 2}, f.caption);
                    }
                }};
    }

    PageRoom room_;
    std::vector<Piece> pieces_;
    bool break_page_ = false;
};

} // namespace

std::vector<Piece> page_pieces(const Document& document, const PageRoom& room)
{
    PieceMaker maker(room);
    for (const Block& block : document.blocks)
        std::visit(maker, block);
    return maker.take();
}

} // namespace glim
