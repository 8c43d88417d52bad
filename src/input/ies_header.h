#pragma once

#include "input/ies_edition.h"
#include "input/photometry_file.h"
#include "input/text_scanner.h"

namespace glim {

/// What `TILT=` says.
enum class IesTilt {
    none,
    included, ///< the angles and factors follow
    in_file   ///< they stand in another file
};

/// The lines of an LM-63 file before its numbers.
struct IesHeader {
    const IesEditionRow* edition = nullptr;
    std::vector<PhotometryNote> notes;
    IesTilt tilt = IesTilt::none;
    std::string_view tilt_file; ///< as named
    std::string_view numbers;   ///< the text behind the TILT line
};

/// Reads them. Odd first lines and keyword lines are warnings; keywords that do not close are
/// complaints. Refuses a file whose edition is not known or that has no TILT line.
IesHeader read_ies_header(PhotometricText& file);

} // namespace glim
