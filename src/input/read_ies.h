#pragma once

#include "input/photometry_file.h"

#include <filesystem>
#include <functional>

namespace glim {

/// Gives the text of the file that `TILT=` names, or nothing if there is none; throws InputError if
/// it may not be read.
using TiltLookup = std::function<std::optional<std::string>(const std::string& name)>;

/// An LM-63 file of 1986, 1991, 1995, 2002 or 2019: types A, B and C, absolute and relative,
/// TILT=NONE, INCLUDE or a file. Candela are value x multiplier x ballast factor, and x
/// ballast-lamp factor in the editions that have one. Factors of TILT are checked, never applied:
/// they are for a lamp that burns tilted from the position in which it was measured.
///
/// Throws InputError with all complaints; `name` is the file's in them.
PhotometryFile read_ies(std::string_view text, const std::string& name,
                        const TiltLookup& tilt_file);

} // namespace glim
