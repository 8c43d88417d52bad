#include "report/table_pieces.h"

#include "report/column_widths.h"
#include "report/page_colours.h"
#include "report/text_chunks.h"
#include "words/text_block.h"

#include <algorithm>
#include <numeric>
#include <stdexcept>

namespace glim {

namespace {

constexpr double cell_size = 7.5;
constexpr double caption_size = 8;
constexpr double side_padding = 3.5;
constexpr double line_padding = 2.5;
constexpr double above_table = 9;
constexpr double below_caption = 3;
/// No word takes more of a table's width than this for itself: a long name breaks instead.
constexpr double most_for_a_word = 0.35;

using Texts = std::vector<Text>;

class TableMaker {
public:
    TableMaker(const Table& table, const PageRoom& room)
        : table_(table), room_(room), widths_(widths())
    {
    }

    std::vector<Piece> pieces() const
    {
        std::vector<Piece> all;
        if (!table_.caption.empty())
            all.push_back(caption());
        const auto head = std::make_shared<const Piece>(head_piece());
        all.push_back(*head);
        all.back().above = table_.caption.empty() ? above_table : below_caption;
        for (const std::vector<TableCell>& row : table_.rows)
            for (const Texts& part : row_parts(row, room_.height - head->height)) {
                all.push_back(row_piece(part, false));
                all.back().repeated = head;
            }
        return all;
    }

private:
    static Text cell_text(const std::string& words, ColumnKind kind)
    {
        const Align align = kind == ColumnKind::figures ? Align::right : Align::left;
        return {.words = harmless(words), .size = cell_size, .colour = ink, .align = align};
    }

    Text title_of(std::size_t column) const
    {
        Text text = cell_text(table_.columns[column].title, table_.columns[column].kind);
        text.bold = true;
        return text;
    }

    Text text_of(const TableCell& cell, std::size_t column) const
    {
        Text text = cell_text(cell.text, table_.columns[column].kind);
        text.bold = cell.tone == Tone::not_met || cell.tone == Tone::open;
        text.colour = ink_of(cell.tone);
        return text;
    }

    static double longest_word(const Text& text)
    {
        double longest = 0;
        Text word = text;
        for (std::size_t at = 0; at < text.words.size();) {
            const std::size_t end = end_of_word(text.words, at);
            word.words = text.words.substr(at, end - at);
            longest = std::max(longest, extent_of(word).width);
            at = end < text.words.size() && text.words[end] == ' ' ? end + 1 : end;
        }
        return longest;
    }

    /// Where a line may break next: at a blank, or behind a hyphen between letters.
    static std::size_t end_of_word(const std::string& words, std::size_t at)
    {
        const auto is_letter = [](char c) {
            return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        };
        for (std::size_t i = at; i < words.size(); ++i) {
            if (words[i] == ' ')
                return i == at ? i + 1 : i;
            if (words[i] == '-' && i > at && i + 1 < words.size() && is_letter(words[i - 1]) &&
                is_letter(words[i + 1]))
                return i + 1;
        }
        return words.size();
    }

    /// Whether code must stand in one line.
    enum class Code { whole, in_two_lines };

    /// Words break at blanks, figures never, and code only where it is long.
    double least_of(const Text& text, ColumnKind kind, double line, Code code) const
    {
        switch (kind) {
        case ColumnKind::words:
            return std::min(longest_word(text), most_for_a_word * room_.width);
        case ColumnKind::figures:
            return line;
        case ColumnKind::code:
            return code == Code::in_two_lines && line > most_for_a_word * room_.width ? line / 2
                                                                                      : line;
        }
        throw std::logic_error("a column of no kind");
    }

    void widen(ColumnNeeds& needs, const Text& text, ColumnKind kind, Code code) const
    {
        // A hair more than it takes, so that rounding does not break the line.
        constexpr double slack = 0.5;
        const double padding = 2 * side_padding + slack;
        const double line = extent_of(text).width;
        needs.least = std::max(needs.least, least_of(text, kind, line, code) + padding);
        needs.natural = std::max({needs.natural, needs.least, line + padding});
    }

    std::vector<ColumnNeeds> needs(Code code) const
    {
        std::vector<ColumnNeeds> all(table_.columns.size());
        for (std::size_t c = 0; c < all.size(); ++c) {
            widen(all[c], title_of(c), ColumnKind::words, code);
            for (const std::vector<TableCell>& row : table_.rows)
                widen(all[c], text_of(row[c], c), table_.columns[c].kind, code);
        }
        return all;
    }

    /// Long code breaks where words would have to otherwise.
    std::vector<double> widths() const
    {
        const std::vector<ColumnNeeds> wanted = needs(Code::whole);
        const double least =
            std::accumulate(wanted.begin(), wanted.end(), 0.0,
                            [](double sum, const ColumnNeeds& n) { return sum + n.least; });
        return column_widths(least <= room_.width ? wanted : needs(Code::in_two_lines),
                             room_.width);
    }

    Piece caption() const
    {
        const Text text{.words = harmless(table_.caption),
                        .size = caption_size,
                        .colour = quiet_ink,
                        .width = room_.width,
                        .most_lines = 6};
        return {.above = above_table,
                .height = extent_of(text).height,
                .draw = [text](Canvas& canvas, const Point2& at) { canvas.text(at, text); },
                .keep_with_next = true};
    }

    Piece head_piece() const
    {
        Texts titles;
        for (std::size_t c = 0; c < table_.columns.size(); ++c) {
            titles.push_back(title_of(c));
            titles.back().width = widths_[c] - 2 * side_padding;
        }
        Piece piece = row_piece(titles, true);
        piece.keep_with_next = true;
        return piece;
    }

    /// The row's texts, broken to as many rows as their height asks for.
    std::vector<Texts> row_parts(const std::vector<TableCell>& row, double most_height) const
    {
        std::vector<Texts> parts(1);
        for (std::size_t c = 0; c < row.size(); ++c) {
            Text text = text_of(row[c], c);
            text.width = widths_[c] - 2 * side_padding;
            const Texts chunks = text_chunks(text, most_height - 2 * line_padding);
            for (std::size_t i = 0; i < chunks.size(); ++i) {
                if (i == parts.size())
                    parts.emplace_back();
                for (Text empty = text; parts[i].size() < c;) {
                    empty.words.clear();
                    parts[i].push_back(empty);
                }
                parts[i].push_back(chunks[i]);
            }
        }
        return parts;
    }

    Piece row_piece(const Texts& texts, bool is_head) const
    {
        double height = 0, width = 0;
        for (const Text& text : texts)
            height = std::max(height, extent_of(text).height + 2 * line_padding);
        for (const double w : widths_)
            width += w;
        const auto draw = [=, widths = widths_](Canvas& canvas, const Point2& at) {
            draw_ground(canvas, {at.x(), at.y(), width, height}, is_head);
            draw_cells(canvas, at, texts, widths);
        };
        return {.above = 0, .height = height, .draw = draw};
    }

    static void draw_ground(Canvas& canvas, const Rect& row, bool is_head)
    {
        if (is_head)
            canvas.fill(path_of(row), {head_paper});
        canvas.stroke(segment({row.x, row.bottom()}, {row.right(), row.bottom()}),
                      {.colour = rule_line, .width = 0.5});
    }

    static void draw_cells(Canvas& canvas, const Point2& at, const Texts& texts,
                           const std::vector<double>& widths)
    {
        double x = at.x();
        for (std::size_t c = 0; c < texts.size(); ++c) {
            canvas.text({anchor(texts[c].align, x, widths[c]), at.y() + line_padding}, texts[c]);
            x += widths[c];
        }
    }

    static double anchor(Align align, double x, double width)
    {
        return align == Align::right ? x + width - side_padding : x + side_padding;
    }

    const Table& table_;
    PageRoom room_;
    std::vector<double> widths_;
};

} // namespace

std::vector<Piece> table_pieces(const Table& table, const PageRoom& room)
{
    return TableMaker(table, room).pieces();
}

} // namespace glim
