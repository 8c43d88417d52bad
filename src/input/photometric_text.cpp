#include "input/photometric_text.h"

#include "input/text_scanner.h"
#include "machine/utf8.h"

#include <charconv>
#include <cmath>
#include <limits>

namespace glim {

namespace {

std::optional<double> decimal_number(std::string_view word)
{
    if (word.size() > 1 && word[0] == '+' && word[1] != '-')
        word.remove_prefix(1);
    double value = 0;
    const char* const end = word.data() + word.size();
    const auto [stop, error] = std::from_chars(word.data(), end, value);
    // Also keeps out what is not a number, which is not at most anything.
    if (error != std::errc{} || stop != end || !(std::abs(value) <= largest_photometric_number))
        return std::nullopt;
    return value;
}

/// ISO 8859-1 is the first 256 characters of Unicode.
std::string from_latin1(char c)
{
    const auto byte = static_cast<unsigned char>(c);
    if (byte < 0x80)
        return {c};
    return {static_cast<char>(0xc0U | (byte >> 6U)), static_cast<char>(0x80U | (byte & 0x3fU))};
}

} // namespace

std::optional<double> photometric_number(std::string_view word, DecimalComma comma)
{
    const std::size_t at = word.find(',');
    if (comma == DecimalComma::refused || at == std::string_view::npos)
        return decimal_number(word);
    std::string with_point(word);
    with_point[at] = '.';
    return decimal_number(with_point);
}

std::optional<int> whole_photometric_number(std::string_view word)
{
    const std::optional<double> value = photometric_number(word);
    if (!value || *value != std::floor(*value))
        return std::nullopt;
    static_assert(largest_photometric_number <= std::numeric_limits<int>::max());
    return static_cast<int>(*value);
}

std::string note_text(std::string_view bytes)
{
    const bool keep = is_utf8(bytes);
    std::string text;
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte < 0x20 || byte == 0x7f)
            text += ' ';
        else
            text += keep ? std::string(1, c) : from_latin1(c);
    }
    return text;
}

} // namespace glim
