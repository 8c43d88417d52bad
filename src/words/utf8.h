#pragma once

namespace glim {

/// Whether a byte of UTF-8 goes on with the character that began before it.
constexpr bool continues_character(char byte)
{
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

} // namespace glim
