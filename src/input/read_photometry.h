#pragma once

#include "input/photometry_file.h"

#include <filesystem>
#include <span>

namespace glim {

/// One kind of photometric file.
struct PhotometryFormat {
    std::string_view ending; ///< in lower case; upper case in a name is the same
    std::string_view name;
};
std::span<const PhotometryFormat> photometry_formats();

/// Whether the ending of the name is one of a photometric file.
bool names_photometry(const std::filesystem::path& file);

/// The photometric file, its format told by its ending. A file that `TILT=` names is looked for
/// beside it. Throws InputError with all complaints, in which the file is called
/// `name_for_messages`.
PhotometryFile read_photometry(const std::filesystem::path& file,
                               const std::string& name_for_messages);

} // namespace glim
