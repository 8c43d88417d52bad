#include "generator/indicator_light.h"

#include <array>
#include <charconv>
#include <cmath>
#include <vector>

namespace glim::demo {
namespace {

/// A bump in degrees about an axis, and how far from it a third or so is left.
struct Spread {
    double cd, h, v, width_h, width_v;

    double toward(double h_deg, double v_deg) const
    {
        const double across = (h_deg - h) / width_h, up = (v_deg - v) / width_v;
        return cd * std::exp(-across * across - up * up);
    }
};

constexpr Spread beam{640, 0, 0, 11, 8};
constexpr Spread wide{30, 6, 0, 50, 17};

/// Every 2.5 degrees to 30 from the axis, then every 5.
std::vector<double> angles_to_90()
{
    std::vector<double> angles;
    for (double a = -90; a <= 90; a += a >= -30 && a < 30 ? 2.5 : 5)
        angles.push_back(a);
    return angles;
}

std::string fixed(double value, int decimals)
{
    std::array<char, 32> digits;
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value,
                                   std::chars_format::fixed, decimals);
    return {digits.data(), end.ptr};
}

/// Ten numbers a line, as lines of such files must not grow long.
template <class Figure>
std::string lines_of(const std::vector<double>& angles, int decimals, const Figure& figure)
{
    std::string text;
    for (std::size_t i = 0; i < angles.size(); ++i)
        text += fixed(figure(angles[i]), decimals) +
                (i % 10 == 9 || i + 1 == angles.size() ? "\n" : " ");
    return text;
}

} // namespace

double indicator_cd(double h_deg, double v_deg)
{
    return beam.toward(h_deg, v_deg) + wide.toward(h_deg, v_deg);
}

std::string indicator_ies()
{
    const std::vector<double> across = angles_to_90(), up = across;
    const auto as_it_is = [](double angle) { return angle; };
    std::string text = "IESNA:LM-63-2002\n"
                       "[TEST] made up for the demo corner\n"
                       "[TESTLAB] none: a formula, no lamp was measured\n"
                       "[ISSUEDATE] none\n"
                       "[MANUFAC] none\n"
                       "[LUMINAIRE] front direction indicator, left\n"
                       "TILT=NONE\n";
    text += "1 -1 1 " + std::to_string(up.size()) + " " + std::to_string(across.size()) +
            " 3 2 0.12 0.05 0\n1 1 21\n";
    text += lines_of(up, 1, as_it_is) + lines_of(across, 1, as_it_is);
    for (const double h : across) // on the left lamp outboard is to the left, where H is negative
        text += lines_of(up, 3, [&](double v) { return indicator_cd(0 - h, v); });
    return text;
}

} // namespace glim::demo
