#pragma once

#include "geometry/bearing.h"
#include "machine/workers.h"
#include "visibility/lamp_view.h"
#include "visibility/seen_area.h"

namespace glim {

class Certificate;

/// The areas toward one direction. Pure: the same answer in any thread. Bounds are certified if
/// `certificate` covers the direction; it has to be the view's own (see Certificate).
SeenArea seen_toward(const LampView& view, const Direction& toward,
                     const Certificate* certificate = nullptr);

/// The areas toward each direction, in order. Throws Stopped if it was stopped.
std::vector<SeenArea> sweep(const LampView& view, std::span<const Direction> directions,
                            const Workers& workers, const Certificate* certificate = nullptr);

/// Projected area that parts take toward one direction; places as in `view.all`.
struct TakenArea {
    Area alone;   ///< removing this part frees so much
    Area jointly; ///< others are in the way there too
};

/// By lattice corners, scaled so that all of them together stand for what is hidden. How a hidden
/// area divides among several parts is precise to about a cell along their rims.
std::vector<TakenArea> taken_toward(const LampView& view, const Direction& toward);

} // namespace glim
