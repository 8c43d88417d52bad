#include "report/html_text.h"

#include "words/utf8.h"

#include <algorithm>
#include <cstdint>

namespace glim {

namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD";

struct Character {
    char32_t code = 0;
    std::size_t bytes = 0; ///< 0: these bytes are no UTF-8
};

std::size_t length_by(unsigned char first)
{
    if (first < 0x80)
        return 1;
    if (first >= 0xC2 && first < 0xE0)
        return 2;
    if (first >= 0xE0 && first < 0xF0)
        return 3;
    return first >= 0xF0 && first < 0xF5 ? 4 : 0;
}

/// Overlong forms have too small a code, surrogates are no characters.
bool is_proper(char32_t code, std::size_t bytes)
{
    constexpr char32_t least[] = {0, 0, 0x80, 0x800, 0x10000};
    return code >= least[bytes] && code <= 0x10FFFF && (code < 0xD800 || code > 0xDFFF);
}

Character next_character(std::string_view text)
{
    const auto first = static_cast<unsigned char>(text.front());
    const std::size_t bytes = length_by(first);
    if (bytes == 0 || bytes > text.size())
        return {};
    char32_t code = bytes == 1 ? first : first & (0x7FU >> bytes);
    for (std::size_t i = 1; i < bytes; ++i) {
        if (!continues_character(text[i]))
            return {};
        code = code << 6U | (static_cast<unsigned char>(text[i]) & 0x3FU);
    }
    return is_proper(code, bytes) ? Character{code, bytes} : Character{};
}

/// Control characters but for white space, and noncharacters (HTML, "preprocessing the input
/// stream").
bool is_forbidden(char32_t code)
{
    const bool white = code == '\t' || code == '\n';
    const bool control = (code < 0x20 && !white) || (code >= 0x7F && code < 0xA0);
    return control || (code >= 0xFDD0 && code <= 0xFDEF) || (code & 0xFFFEU) == 0xFFFE;
}

std::string_view reference_for(char32_t code)
{
    switch (code) {
    case '&':
        return "&amp;";
    case '<':
        return "&lt;";
    case '>':
        return "&gt;";
    case '"':
        return "&quot;";
    default:
        return {};
    }
}

} // namespace

std::string html_text(std::string_view text)
{
    std::string html;
    while (!text.empty()) {
        const Character c = next_character(text);
        const std::string_view reference = reference_for(c.code);
        if (c.bytes == 0 || is_forbidden(c.code))
            html += replacement;
        else
            html += reference.empty() ? text.substr(0, c.bytes) : reference;
        text.remove_prefix(c.bytes == 0 ? 1 : c.bytes);
    }
    return html;
}

std::string data_uri(std::string_view media_type, std::string_view bytes)
{
    constexpr std::string_view digits =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string uri = "data:" + std::string(media_type) + ";base64,";
    uri.reserve(uri.size() + bytes.size() / 3 * 4 + 4);
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        const std::size_t there = std::min<std::size_t>(3, bytes.size() - i);
        std::uint32_t three = 0;
        for (std::size_t k = 0; k < 3; ++k)
            three = three << 8U | (k < there ? static_cast<unsigned char>(bytes[i + k]) : 0U);
        for (std::size_t k = 0; k < 4; ++k)
            uri += k <= there ? digits[three >> (18 - 6 * k) & 63U] : '=';
    }
    return uri;
}

} // namespace glim
