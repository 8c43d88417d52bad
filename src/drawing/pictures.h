#pragma once

#include "drawing/figure.h"
#include "judgement/session.h"

namespace glim {

/// What an eye sees of a lamp from one direction.
struct EyePicture {
    std::size_t look = 0; ///< place in Findings::looks
    Bearing toward;
    Figure figure;
    std::vector<std::size_t> checks; ///< places in Findings::checks; ascending
};

/// The whole corner, with what hides the lamp that decides a check.
struct VehiclePicture {
    std::size_t check = 0; ///< place in Findings::checks
    Figure figure;
};

struct Pictures {
    std::vector<EyePicture> eyes;
    std::vector<VehiclePicture> vehicles;
};

/// The pictures of a report. Of the row that decides a check (or, where that looks in no direction,
/// of the worst one that does): each drawn lamp that it speaks of, and the one that decides, from
/// its worst direction, from its axis, from the corners of its field, and, unless its axis points
/// outboard, from 45 degrees across the vehicle; one picture a lamp and direction. And the whole
/// corner for each such check. None for a check that looks in no direction. `findings` are those of
/// the session as it is; tells progress by pictures. Throws Stopped.
Pictures pictures_of(const Session& session, const Findings& findings, const Workers& workers);

} // namespace glim
