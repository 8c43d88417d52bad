#pragma once

#include "generator/lift.h"
#include "generator/obj_file.h"
#include "generator/skin.h"

namespace glim::demo {

/// What stands in the lamp's opening, from the outside in: a clear cover (a closed double shell), a
/// bezel with three apertures, behind them the lenses of direction indicator and position lamp and
/// the dipped beam with its bowl, and the housing.
std::vector<Part> lamp_unit(const Skin& skin);

/// A lamp in a frame of its own that stands on the skin, in a chart of it.
struct StandingLamp {
    std::string name; ///< parts are called `name`_lens and `name`_frame
    Outline lens;
};
std::vector<Part> standing_lamp(const StandingLamp& lamp, const Lift& lift);

} // namespace glim::demo
