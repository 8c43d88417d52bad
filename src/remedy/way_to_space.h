#pragma once

#include "remedy/keep_clear_set.h"

#include <functional>

namespace glim {

// How far it is out of a keep-clear set and into it along a straight way. Level frame; `way` is a
// unit vector.

/// How far a place that is inside has to go to be out, to 0.005 mm; `deepest_intrusion` where it
/// is farther. Looked for in steps from 0.25 mm on that grow: a gap narrower than a step may be
/// passed over.
Length way_out(const Point& from, const Vector& way, const KeepClearSet& set);
/// Deeper than this nothing is told apart.
inline constexpr Length deepest_intrusion = millimetres(500);

/// How far a place may go before it meets the set: nothing where that is `within` or more. Never
/// more than there is, however thin the set is where the way meets it: stretches of the way are
/// passed over only where the set surely does not reach into them, and halved until they are
/// way_grain of the way to them. Nor less, but by this grain, and that what is passed by less than
/// about that counts as met. The same for any `within` that is more. Places where `spared` says so
/// do not count, within the grain.
std::optional<Length> way_in(const Point& from, const Vector& way, const KeepClearSet& set,
                             Length within, const std::function<bool(const Point&)>& spared);
/// Farther than this nobody argues over a gap: `within` is at most this.
inline constexpr Length farthest_way_in = millimetres(100);
/// How finely a way is told at `distance`.
Length way_grain(Length distance);

} // namespace glim
