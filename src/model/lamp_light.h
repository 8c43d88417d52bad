#pragma once

#include "model/mounting.h"

#include <array>
#include <string>
#include <variant>
#include <vector>

namespace glim {

// How bright a lit face is here and there. It says how much of the light a shadow takes that covers
// so much of the face; a photometric file does not tell it.

/// Every part sends its share of the light by its projected area.
struct UniformlyBright {};

/// Each surface sends its share of the light, evenly over itself.
struct BrightBySurface {
    std::vector<double> shares; ///< one for each of Lamp::emits, in their order; they add up to 1
};

/// Brightness as grey values in a rectangle laid on the lit face: the picture's edges are the edges
/// of the box around what the lamp shows along its own reference axis, which it has to declare,
/// seen from before it with the vehicle's up upward.
struct LuminancePicture {
    std::string file; ///< as the study writes it
    std::size_t columns = 0, rows = 0;
    std::vector<float> grey; ///< row by row from the top, each from the left; 0 is dark
};

using Brightness = std::variant<UniformlyBright, BrightBySurface, LuminancePicture>;

struct BrightnessWord {
    std::string_view key;   ///< in results, in the order of the alternatives
    std::string_view words; ///< what is assumed, for people
};
inline constexpr std::array brightness_words = {
    BrightnessWord{"uniform", "every part of the lit face equally bright in that direction"},
    BrightnessWord{"by_surface", "each lit surface with its declared share of the light, evenly "
                                 "bright over itself, in every direction"},
    BrightnessWord{"luminance_picture", "the luminance picture, the same in every direction"},
};
static_assert(brightness_words.size() == std::variant_size_v<Brightness>);

/// What is known of the light of one lamp.
struct LampLight {
    LampId lamp;
    std::string file; ///< the photometric file, as the study writes it
    Photometry photometry;
    Mounting mounting;
    Brightness brightness = UniformlyBright{};
    /// Of a clear cover that was not there when the file was measured: 0.9 lets 90 % through.
    double transmittance = 1;
};

} // namespace glim
