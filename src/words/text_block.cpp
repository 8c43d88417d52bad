#include "words/text_block.h"

#include "machine/utf8.h"

#include <algorithm>
#include <utility>

namespace glim {

namespace {

/// A control character of ASCII, or one of U+0080 to U+009F, which terminals obey as well.
bool steers_terminal(std::string_view text, std::size_t at)
{
    const auto byte = static_cast<unsigned char>(text[at]);
    if (byte < 0x20U || byte == 0x7FU)
        return true;
    return byte == 0xC2U && at + 1 < text.size() &&
           static_cast<unsigned char>(text[at + 1]) < 0xA0U;
}

std::vector<std::string> words_of_text(std::string_view text)
{
    std::vector<std::string> words;
    while (!text.empty()) {
        const std::size_t start = std::min(text.find_first_not_of(' '), text.size());
        const std::size_t end = std::min(text.find(' ', start), text.size());
        if (end > start)
            words.emplace_back(text.substr(start, end - start));
        text.remove_prefix(end);
    }
    return words;
}

std::string blanks(int count)
{
    return std::string(static_cast<std::size_t>(std::max(count, 0)), ' ');
}

std::vector<std::vector<std::string>> harmless_cells(std::vector<std::vector<std::string>> rows)
{
    for (std::vector<std::string>& row : rows)
        for (std::string& cell : row)
            cell = harmless(cell);
    return rows;
}

std::vector<int> column_widths(const std::vector<std::vector<std::string>>& rows)
{
    std::vector<int> widths;
    for (const std::vector<std::string>& row : rows)
        for (std::size_t c = 0; c < row.size(); ++c) {
            if (c == widths.size())
                widths.push_back(0);
            widths[c] = std::max(widths[c], width_of(row[c]));
        }
    return widths;
}

} // namespace

std::string harmless(std::string_view text)
{
    std::string clean;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool is_break = text[i] == '\n' || text[i] == '\r' || text[i] == '\t';
        if (!steers_terminal(text, i)) {
            clean += text[i];
            continue;
        }
        clean += is_break ? ' ' : '?';
        i += static_cast<unsigned char>(text[i]) == 0xC2U ? 1 : 0;
    }
    return clean;
}

int width_of(std::string_view text)
{
    return static_cast<int>(
        std::count_if(text.begin(), text.end(), [](char c) { return !continues_character(c); }));
}

std::string wrapped(std::string_view text, int columns, int hanging)
{
    std::string block;
    int used = 0;
    bool line_is_empty = true;
    for (const std::string& word : words_of_text(harmless(text))) {
        if (!line_is_empty && used + 1 + width_of(word) > columns) {
            block += "\n" + blanks(hanging);
            used = hanging;
            line_is_empty = true;
        }
        block += (line_is_empty ? "" : " ") + word;
        used += width_of(word) + (line_is_empty ? 0 : 1);
        line_is_empty = false;
    }
    return block;
}

std::string labelled_block(const std::vector<Labelled>& entries, int indent, const TextStyle& style)
{
    int widest = 0;
    for (const Labelled& entry : entries)
        widest = std::max(widest, width_of(entry.label));
    const int text_from = indent + widest + 2;
    std::string block;
    for (const Labelled& entry : entries) {
        block += blanks(indent) + entry.label + blanks(text_from - indent - width_of(entry.label));
        // Wrapped as if the label's column were not there, then moved under it.
        const int room = style.columns - text_from;
        const bool keep = entry.laid_out && width_of(entry.text) <= room;
        std::string text = keep ? entry.text : wrapped(entry.text, room);
        for (std::size_t at = 0; (at = text.find('\n', at)) != std::string::npos; ++at)
            text.insert(at + 1, blanks(text_from));
        block += text + "\n";
    }
    return block;
}

std::vector<std::string> aligned_rows(const std::vector<std::vector<std::string>>& cells,
                                      const std::vector<std::size_t>& right_aligned)
{
    const std::vector<std::vector<std::string>> rows = harmless_cells(cells);
    const std::vector<int> widths = column_widths(rows);
    const auto is_right = [&](std::size_t c) {
        return std::find(right_aligned.begin(), right_aligned.end(), c) != right_aligned.end();
    };
    std::vector<std::string> lines;
    for (const std::vector<std::string>& row : rows) {
        std::string line;
        for (std::size_t c = 0; c < row.size(); ++c) {
            const std::string gap = blanks(widths[c] - width_of(row[c]));
            line += (c == 0 ? "" : "  ") + (is_right(c) ? gap + row[c] : row[c] + gap);
        }
        line.erase(line.find_last_not_of(' ') + 1);
        lines.push_back(std::move(line));
    }
    return lines;
}

} // namespace glim
