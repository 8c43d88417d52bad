#include "machine/utf8.h"

namespace glim {

namespace {

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

} // namespace

Utf8Character first_character(std::string_view text)
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
    return is_proper(code, bytes) ? Utf8Character{code, bytes} : Utf8Character{};
}

bool is_utf8(std::string_view text)
{
    while (!text.empty()) {
        const std::size_t bytes = first_character(text).bytes;
        if (bytes == 0)
            return false;
        text.remove_prefix(bytes);
    }
    return true;
}

} // namespace glim
