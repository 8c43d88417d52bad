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

} // namespace glim
