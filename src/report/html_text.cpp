#include "report/html_text.h"

#include "machine/utf8.h"

#include <algorithm>
#include <cstdint>

namespace glim {

namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD";

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
        const Utf8Character c = first_character(text);
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
