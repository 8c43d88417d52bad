#pragma once

#include "input/photometry_file.h"

namespace glim {

/// The C planes of a EULUMDAT file whose intensities are stored, by their places in its list.
struct LdtPlanes {
    FiledSymmetry symmetry = FiledSymmetry::none;
    std::size_t first = 0; ///< stored ones follow each other, the first of the list after the last
    std::size_t count = 0;
};

/// What the symmetry code (0 to 4) stands for among so many planes. A count of planes that the code
/// cannot divide is a complaint at `count_word`.
LdtPlanes ldt_planes(PhotometricText& file, int code, std::size_t planes,
                     std::string_view count_word);

/// Complains of C planes that do not ascend from 0 to below 360, or that do not lie where the
/// symmetry needs them.
void expect_ldt_planes(PhotometricText& file, const std::vector<WrittenNumber>& angles,
                       const LdtPlanes& planes);

/// The angles of the stored planes, in the order in which they are stored.
std::vector<Angle> stored_angles(const std::vector<WrittenNumber>& angles, const LdtPlanes& planes);

} // namespace glim
