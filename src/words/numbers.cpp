#include "words/numbers.h"

#include <array>
#include <cassert>
#include <charconv>
#include <cmath>

namespace glim {

namespace {

std::string without_sign_of_zero(std::string text)
{
    const bool is_zero = text.find_first_not_of("-0.") == std::string::npos;
    return is_zero && text.front() == '-' ? text.substr(1) : text;
}

std::string without_trailing_zeros(std::string text)
{
    if (text.find('.') == std::string::npos)
        return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
        text.pop_back();
    return text;
}

} // namespace

std::string shortest(double value)
{
    assert(std::isfinite(value));
    std::array<char, 32> digits{}; // never more than 24
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value);
    return without_sign_of_zero(std::string(digits.data(), end.ptr));
}

std::string with_decimals(double value, int decimals)
{
    assert(std::isfinite(value));
    std::array<char, 400> digits{}; // the longest double has 309 digits before its point
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value,
                                   std::chars_format::fixed, decimals);
    return without_sign_of_zero(std::string(digits.data(), end.ptr));
}

std::string rounded(double value, int decimals)
{
    return without_trailing_zeros(with_decimals(value, decimals));
}

std::string csv_number(Area area) { return rounded(in_mm2(area), 3); }

std::string csv_number(Length length) { return rounded(in_mm(length), 3); }

std::string csv_number(Angle angle) { return rounded(in_degrees(angle), 6); }

std::string csv_number(SolidAngle solid_angle) { return rounded(in_steradians(solid_angle), 6); }

std::string csv_number(Intensity intensity) { return rounded(in_candelas(intensity), 4); }

std::string counted(std::size_t count, const std::string& thing)
{
    return std::to_string(count) + " " + thing + (count == 1 ? "" : "s");
}

std::string area_words(Area area)
{
    const double mm2 = in_mm2(area);
    return rounded(mm2, std::abs(mm2) < 1 ? 3 : 1) + " mm2";
}

std::string bare_angle(Angle angle) { return rounded(in_degrees(angle), 2); }

std::string angle_words(Angle angle) { return bare_angle(angle) + " deg"; }

std::string share_words(double part, double whole)
{
    const std::string percent = rounded(100 * part / whole, 1);
    if (percent == "100" && part < whole)
        return "over 99.9 %";
    if (percent == "0" && part > 0)
        return "under 0.1 %";
    return percent + " %";
}

} // namespace glim
