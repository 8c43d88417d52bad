#pragma once

#include "remedy/sight_lines.h"
#include "report/json.h"

namespace glim {

/// All that was found. `command` is what gives it again.
Json sight_lines_json(const SightLines& lines, const LampSketch& sketch,
                      const std::string& command);
/// A row a point of a curve: mm of the sketch's frame.
std::string curves_csv(const SightLines& lines);
/// A row a place across the vehicle.
std::string nose_csv(const SightLines& lines);
/// The curves of one view; a layer a row and curve.
std::string view_dxf(const SightLines& lines, SightView view);

} // namespace glim
