#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace glim {

/// No coordinate of a mesh is farther from its origin than this, in whatever unit: a file that says
/// more is damaged, and the squares of such numbers would leave the range of a float.
inline constexpr double largest_coordinate = 1e9;

/// The whole word as a decimal number, of at most `largest_coordinate` either way; a leading + is
/// allowed. Reads the same on every machine and in every language. Nothing if it is anything else.
std::optional<double> coordinate_in(std::string_view word);

/// What keeps `word` from being a coordinate, and what to do about it.
struct NumberTrouble {
    std::string what;
    std::string remedy;
};
/// Requires: coordinate_in(word) is nothing.
NumberTrouble number_trouble(std::string_view word);

/// How many digits are written from the first that is not 0 on, without those of the exponent: 4 in
/// "0.001200", 0 in "0.0".
int significant_digits(std::string_view word);

} // namespace glim
