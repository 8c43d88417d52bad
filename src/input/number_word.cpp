#include "input/number_word.h"

#include "input/text_scanner.h"

#include <charconv>
#include <cmath>

namespace glim {

namespace {

struct Parsed {
    double value = 0;
    std::errc error = std::errc::invalid_argument;
};

Parsed parsed(std::string_view word)
{
    if (word.size() > 1 && word[0] == '+' && word[1] != '-')
        word.remove_prefix(1);
    Parsed result;
    const char* const end = word.data() + word.size();
    const auto [stop, error] = std::from_chars(word.data(), end, result.value);
    result.error = stop == end ? error : std::errc::invalid_argument;
    return result;
}

bool is_within_range(double value) { return std::abs(value) <= largest_coordinate; }

std::string quoted(std::string_view word) { return "`" + shown(word) + "`"; }

bool has_decimal_comma(std::string_view word)
{
    const std::size_t comma = word.find(',');
    if (comma == std::string_view::npos)
        return false;
    std::string with_point(word);
    with_point[comma] = '.';
    return coordinate_in(with_point).has_value();
}

} // namespace

std::optional<double> coordinate_in(std::string_view word)
{
    const Parsed number = parsed(word);
    if (number.error != std::errc{} || !is_within_range(number.value))
        return std::nullopt;
    return number.value;
}

NumberTrouble number_trouble(std::string_view word)
{
    const Parsed number = parsed(word);
    if (has_decimal_comma(word))
        return {quoted(word) + " has a comma in the middle of a number",
                "write a point before the decimals"};
    if (number.error == std::errc::invalid_argument)
        return {quoted(word) + " is not a number", "write digits such as 12.5 or -1.25e1"};
    if (number.error == std::errc::result_out_of_range)
        return {quoted(word) + " is too large or too small to be a coordinate",
                "repair the mesh where it comes from"};
    if (!std::isfinite(number.value))
        return {quoted(word) + " is not a finite number", "repair the mesh where it comes from"};
    return {quoted(word) + " is too large to be a coordinate",
            "bring the mesh within 1e9 of its origin"};
}

int significant_digits(std::string_view word)
{
    int count = 0;
    for (const char c : word) {
        if (c == 'e' || c == 'E')
            break;
        const bool is_digit = c >= '0' && c <= '9';
        count += is_digit && (count > 0 || c != '0') ? 1 : 0;
    }
    return count;
}

} // namespace glim
