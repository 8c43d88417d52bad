#include "report/page_colours.h"

#include <string_view>

namespace glim {

Colour ink_of(Tone tone)
{
    switch (tone) {
    case Tone::met:
        return met_ink;
    case Tone::not_met:
        return not_met_ink;
    case Tone::open:
        return open_ink;
    case Tone::plain:
        break;
    }
    return ink;
}

std::string hex_of(Colour colour)
{
    constexpr std::string_view digits = "0123456789abcdef";
    std::string hex = "#";
    for (const std::uint8_t channel : {colour.red, colour.green, colour.blue}) {
        hex += digits[channel >> 4U];
        hex += digits[channel & 0xFU];
    }
    return hex;
}

} // namespace glim
