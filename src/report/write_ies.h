#pragma once

#include "model/photometry.h"

#include <string>

namespace glim {

/// LM-63-2002 text of a type A grid as it stands: absolute, one lamp, every number the shortest
/// that reads back as the same, so that nothing is lost. `notes` become keyword lines; a label is
/// put in capitals, `[`, `]` and line breaks of either become blanks.
///
/// `watts` is what the lamp takes; 0 where it is not known.
///
/// Requires: a type A grid within H and V of +-90 degrees. H from 0 on would be read as the right
/// half of a symmetric lamp, which is what LM-63 says it is.
std::string ies_text(const IntensityGrid& grid, const LitOpening& opening,
                     const std::vector<PhotometryNote>& notes, double watts = 0);

} // namespace glim
