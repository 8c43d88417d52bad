#include "specimens/lightness.h"

#include <cmath>

namespace glim::test {

namespace {

double linear(std::uint8_t code)
{
    const double c = code / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

} // namespace

double lightness(Colour c)
{
    const double y = 0.2126 * linear(c.red) + 0.7152 * linear(c.green) + 0.0722 * linear(c.blue);
    return 116 * std::cbrt(y) - 16;
}

} // namespace glim::test
