#include "input/filed_poles.h"

#include "input/text_scanner.h"
#include "model/goniometer.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace glim {

namespace {

/// As a share of the file's peak.
constexpr double grain_at_poles = 0.01;

/// What all planes give at one pole.
struct AtPole {
    std::string_view word; ///< where the pole's angle is written
    std::vector<Intensity> intensities;
};

/// Whether an angle of types a and b, or a gamma, lies at a pole.
bool is_pole(Goniometer goniometer, double angle)
{
    return goniometer == Goniometer::c ? angle == 0 || angle == 180 : std::abs(angle) == 90;
}

/// The poles stand in V of types a and c, which every plane passes, and in H of type b, of which
/// each is a plane by itself.
std::vector<AtPole> poles_of(const IntensityGrid& filed, const FiledAngles& angles)
{
    const bool in_h = filed.goniometer == Goniometer::b;
    const std::vector<WrittenNumber>& to_pole = in_h ? angles.horizontal : angles.vertical;
    const std::size_t around = in_h ? filed.vertical.size() : filed.horizontal.size();
    std::vector<AtPole> poles;
    for (std::size_t i = 0; i < to_pole.size(); ++i) {
        if (!is_pole(filed.goniometer, to_pole[i].value))
            continue;
        AtPole pole{to_pole[i].word, {}};
        for (std::size_t j = 0; j < around; ++j)
            pole.intensities.push_back(in_h ? filed.at(i, j) : filed.at(j, i));
        poles.push_back(std::move(pole));
    }
    return poles;
}

/// Four digits tell which planes to look at.
std::string bare_candelas(Intensity intensity)
{
    constexpr int digits = 4;
    std::array<char, 32> text{};
    const auto [end, error] =
        std::to_chars(text.data(), text.data() + text.size(), in_candelas(intensity),
                      std::chars_format::general, digits);
    return {text.data(), end};
}

} // namespace

void warn_of_poles(PhotometricText& file, const IntensityGrid& filed, const FiledAngles& angles)
{
    const Intensity peak = *std::max_element(filed.candela.begin(), filed.candela.end());
    const GoniometerWord& words = goniometer_words[static_cast<std::size_t>(filed.goniometer)];
    const bool in_h = filed.goniometer == Goniometer::b;
    for (const AtPole& pole : poles_of(filed, angles)) {
        const auto [least, most] =
            std::minmax_element(pole.intensities.begin(), pole.intensities.end());
        if (*most - *least <= grain_at_poles * peak)
            continue;
        const std::string around(in_h ? words.vertical : words.horizontal);
        file.warn(pole.word,
                  "at " + std::string(in_h ? words.horizontal : words.vertical) + " " +
                      shown(pole.word) + ", which is one direction, the file gives from " +
                      bare_candelas(*least) + " to " + bare_candelas(*most) + " cd",
                  "what stands there at " + around + " 0, or nearest to it, counts");
    }
}

} // namespace glim
