#pragma once

#include <cstddef>
#include <string_view>

namespace glim {

/// Whether a byte of UTF-8 goes on with the character that began before it.
constexpr bool continues_character(char byte)
{
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

struct Utf8Character {
    char32_t code = 0;
    std::size_t bytes = 0; ///< 0: the text does not begin with a character of UTF-8
};

/// The first one of `text`, which is not empty. Overlong forms and surrogates are none.
Utf8Character first_character(std::string_view text);

/// Whether all of it is well-formed UTF-8, as plain ASCII is.
bool is_utf8(std::string_view text);

} // namespace glim
