#include "drawing/headroom_colours.h"

#include "remedy/headroom.h"
#include "words/numbers.h"

#include <algorithm>
#include <limits>

namespace glim {

namespace {

constexpr Colour inside_colour{200, 70, 0};
constexpr Colour free_colour{228, 229, 233};
/// By band from what is tight on. None is grey: bodies are.
constexpr std::array<Colour, headroom_levels.size() - 1> tight_colours = {
    {{45, 20, 95}, {40, 85, 145}, {45, 140, 145}, {125, 195, 130}, {236, 235, 170}}};

std::vector<HeadroomBand> made_bands()
{
    std::vector<HeadroomBand> bands{{headroom_levels[0], inside_colour, "inside"}};
    for (std::size_t i = 1; i < headroom_levels.size(); ++i)
        bands.push_back({headroom_levels[i], tight_colours[i - 1],
                         rounded(in_mm(headroom_levels[i - 1]), 0) + " to " +
                             rounded(in_mm(headroom_levels[i]), 0)});
    bands.back().words += " mm";
    bands.push_back({millimetres(std::numeric_limits<double>::infinity()), free_colour, "more"});
    return bands;
}

} // namespace

const std::vector<HeadroomBand>& headroom_bands()
{
    static const std::vector<HeadroomBand> bands = made_bands();
    return bands;
}

const HeadroomBand& headroom_band(Length headroom)
{
    const std::vector<HeadroomBand>& bands = headroom_bands();
    const auto band = std::find_if(bands.begin(), bands.end(),
                                   [&](const HeadroomBand& b) { return headroom < b.below; });
    return band == bands.end() ? bands.back() : *band;
}

} // namespace glim
