#pragma once

#include "machine/new_folder.h"
#include "remedy/sight_lines.h"

namespace glim {

/// Writes the folder of `sight-lines`: a page to pin up, each view as SVG and DXF, the curves and
/// the reach of the nose as CSV, and the same as JSON and text. `command` is what gives
/// it again.
void write_sight_lines(const SightLines& lines, const LampSketch& sketch,
                       const std::string& command, NewFolder& folder);

} // namespace glim
