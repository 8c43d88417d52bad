#pragma once

#include "remedy/sight_lines.h"

#include <stop_token>

namespace glim {

/// Plan view: the outline of the places above which the space is. Side view: its lower and upper
/// limit over all places across the vehicle (what stays below or above is free wherever it is), and
/// on the median plane. Front view: its sections so far ahead of the lens's centre as
/// `front_shares` of the drawing. `set`: level frame of the sketch's lamp.
/// Throws Stopped.
std::vector<LimitCurve> limit_curves(const KeepClearSet& set, const LampSketch& sketch,
                                     const std::stop_token& stop);
inline constexpr std::array front_shares = {0.25, 0.5, 1.0};

/// From the lens's inner edge to the far side of the vehicle, every `nose_step`.
std::vector<NoseReach> nose_reaches(const KeepClearSet& set, const LampSketch& sketch,
                                    const Box& lens);
inline constexpr Length nose_step = millimetres(50);

} // namespace glim
