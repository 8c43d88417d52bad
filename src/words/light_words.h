#pragma once

#include "units/units.h"

#include <string>

namespace glim {

// For people: four digits or so, since a rule asks for 0.05 cd as well as for 400.

/// "0.3 cd", "212.4 cd"
std::string intensity_words(Intensity intensity);
/// "212.4", where the unit stands elsewhere
std::string bare_intensity(Intensity intensity);
/// With so many decimals that `largest` has four digits, and two at least: "212.40", for columns
/// in which figures stand under each other.
std::string column_intensity(Intensity intensity, Intensity largest);
/// "13.27 lm"
std::string flux_words(LuminousFlux flux);

} // namespace glim
