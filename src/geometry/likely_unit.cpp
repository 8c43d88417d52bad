#include "geometry/likely_unit.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace glim {

namespace {

constexpr Length usual_width = millimetres(1800);

double longest_side(const Box& box) { return box.empty() ? 0 : box.size().maxCoeff(); }

/// How many times larger or smaller than usual; 1 is just right.
double oddity(const Box& box, const MeshUnit& unit)
{
    const double ratio = longest_side(box) * unit.one / usual_width;
    return std::max(ratio, 1 / ratio);
}

std::string in_three_digits(double value)
{
    std::array<char, 32> text{};
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::general, 3);
    return {text.data(), end.ptr};
}

std::string in_whole_mm(double value)
{
    std::array<char, 32> text{};
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed, 0);
    return {text.data(), end.ptr};
}

std::string size_words(const Box& box, const MeshUnit& unit)
{
    const Vector size = box.size() * in_mm(unit.one);
    return in_whole_mm(size.x()) + " x " + in_whole_mm(size.y()) + " x " + in_whole_mm(size.z()) +
           " mm";
}

} // namespace

std::vector<MeshUnit> likely_units(const Box& box)
{
    std::vector<MeshUnit> likely;
    for (const MeshUnit& unit : mesh_units) {
        const Length longest = longest_side(box) * unit.one;
        if (longest >= shortest_likely_mesh && longest <= longest_likely_mesh)
            likely.push_back(unit);
    }
    std::stable_sort(likely.begin(), likely.end(), [&](const MeshUnit& a, const MeshUnit& b) {
        return oddity(box, a) < oddity(box, b);
    });
    return likely;
}

std::string likely_unit_words(const Box& box)
{
    std::string words;
    for (const MeshUnit& unit : likely_units(box)) {
        words += words.empty() ? "likely " : " or ";
        words += std::string(unit.word) + " (" + size_words(box, unit) + ")";
    }
    if (!words.empty())
        return words;
    return "no likely unit: the longest side is " + in_three_digits(longest_side(box)) +
           " in the file's own";
}

} // namespace glim
