#pragma once

#include <bit>
#include <cstdint>
#include <string>

namespace glim {

/// The four bytes of a word, the least first.
inline void append_little_endian(std::string& bytes, std::uint32_t word)
{
    for (int shift = 0; shift < 32; shift += 8)
        bytes += static_cast<char>(word >> shift & 0xFF);
}

/// A number as an IEEE 754 float, its least byte first.
inline void append_float(std::string& bytes, double value)
{
    append_little_endian(bytes, std::bit_cast<std::uint32_t>(static_cast<float>(value)));
}

} // namespace glim
