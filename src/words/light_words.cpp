#include "words/light_words.h"

#include "words/numbers.h"

#include <algorithm>

namespace glim {

namespace {

int decimals_for(double value)
{
    int decimals = 4;
    for (double size = value < 0 ? -value : value; size >= 1 && decimals > 0; size /= 10)
        --decimals;
    return decimals;
}

std::string four_digits(double value) { return rounded(value, decimals_for(value)); }

} // namespace

std::string intensity_words(Intensity intensity) { return bare_intensity(intensity) + " cd"; }

std::string bare_intensity(Intensity intensity) { return four_digits(in_candelas(intensity)); }

std::string column_intensity(Intensity intensity, Intensity largest)
{
    constexpr int least_decimals = 2;
    return with_decimals(in_candelas(intensity),
                         std::max(least_decimals, decimals_for(in_candelas(largest))));
}

std::string flux_words(LuminousFlux flux) { return four_digits(in_lumens(flux)) + " lm"; }

} // namespace glim
