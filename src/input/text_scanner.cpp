#include "input/text_scanner.h"

#include "machine/utf8.h"

#include <algorithm>

namespace glim {

namespace {

constexpr std::string_view byte_order_mark = "\xef\xbb\xbf";
constexpr std::size_t longest_shown = 40;
constexpr std::size_t sample_size = 1024;

constexpr bool is_line_end(char c) { return c == '\n' || c == '\r'; }

constexpr bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\v' || c == '\f'; }

constexpr bool is_control(char c)
{
    return static_cast<unsigned char>(c) < 0x20 && !is_blank(c) && !is_line_end(c);
}

std::string hexadecimal(unsigned char byte)
{
    constexpr std::string_view digits = "0123456789abcdef";
    return {'\\', 'x', digits[byte >> 4U], digits[byte & 15U]};
}

} // namespace

TextScanner::TextScanner(std::string_view text, TextRules rules)
    : next_(text.data()), end_(text.data() + text.size()), rules_(rules)
{
    if (text.starts_with(byte_order_mark))
        next_ += byte_order_mark.size();
}

std::string_view TextScanner::word()
{
    skip_blanks();
    const char* const begin = next_;
    if (rules_.hash_begins_comment && begin != end_ && *begin == '#')
        return {begin, begin};
    while (next_ != end_ && !is_blank(*next_) && !is_line_end(*next_) && joint() == 0)
        ++next_;
    return {begin, static_cast<std::size_t>(next_ - begin)};
}

std::string_view TextScanner::rest()
{
    while (next_ != end_ && is_blank(*next_))
        ++next_;
    const char* const begin = next_;
    const char* last = std::find_if(begin, end_, is_line_end);
    next_ = last;
    while (last != begin && is_blank(last[-1]))
        --last;
    return {begin, static_cast<std::size_t>(last - begin)};
}

void TextScanner::end_line()
{
    while (next_ != end_ && !is_line_end(*next_)) {
        const std::size_t over = joint();
        next_ += over == 0 ? 1 : over;
    }
    if (next_ == end_)
        return;
    const bool may_be_double = *next_++ == '\r';
    if (may_be_double && next_ != end_ && *next_ == '\n')
        ++next_;
}

void TextScanner::skip_blanks()
{
    while (next_ != end_) {
        const std::size_t over = is_blank(*next_) ? 1 : joint();
        if (over == 0)
            return;
        next_ += over;
    }
}

/// How many bytes join this line to the next here: a backslash and the line end, or nothing.
std::size_t TextScanner::joint() const
{
    if (*next_ != '\\' || !rules_.backslash_joins_lines)
        return 0;
    const auto left = static_cast<std::size_t>(end_ - next_);
    if (left == 1)
        return 1;
    if (!is_line_end(next_[1]))
        return 0;
    return next_[1] == '\r' && left > 2 && next_[2] == '\n' ? 3 : 2;
}

bool looks_like_text(std::string_view bytes)
{
    const std::string_view sample = bytes.substr(0, sample_size);
    return std::none_of(sample.begin(), sample.end(), is_control);
}

Place place_in(std::string_view text, const std::string& file, std::string_view part)
{
    const auto offset = static_cast<std::size_t>(part.data() - text.data());
    Place place{.file = file, .line = 1, .column = 1, .byte = {}};
    const std::size_t first = text.starts_with(byte_order_mark) ? byte_order_mark.size() : 0;
    for (std::size_t i = first; i < offset; ++i) {
        const bool is_first_of_double =
            text[i] == '\r' && i + 1 < text.size() && text[i + 1] == '\n';
        if (is_line_end(text[i]) && !is_first_of_double) {
            ++place.line;
            place.column = 1;
        } else if (!continues_character(text[i])) {
            ++place.column;
        }
    }
    return place;
}

bool is_on_unfinished_line(std::string_view text, std::string_view part)
{
    const std::string_view after = text.substr(static_cast<std::size_t>(part.data() - text.data()));
    return std::none_of(after.begin(), after.end(), is_line_end);
}

std::string shown(std::string_view word)
{
    std::size_t length = std::min(word.size(), longest_shown);
    while (length > 0 && length < word.size() && continues_character(word[length]))
        --length;
    const std::string_view kept = word.substr(0, length);
    const bool keep_high = is_utf8(kept);
    std::string text;
    for (const char c : kept) {
        const auto byte = static_cast<unsigned char>(c);
        const bool printable = byte >= 0x80 ? keep_high : byte >= 0x20 && byte != 0x7f;
        text += printable ? std::string(1, c) : hexadecimal(byte);
    }
    return length < word.size() ? text + "..." : text;
}

} // namespace glim
