#pragma once

#include "input/photometry_file.h"

namespace glim {

/// A EULUMDAT file, of all five symmetry codes. Its intensities are filed for 1000 lm: candela are
/// value x flux of the lamp set / 1000 x conversion factor. Of several lamp sets the first counts,
/// and a warning says so where the others give another flux.
///
/// Throws InputError with all complaints; `name` is the file's in them.
PhotometryFile read_ldt(std::string_view text, const std::string& name);

} // namespace glim
