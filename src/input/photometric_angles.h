#pragma once

#include "input/photometry_file.h"

namespace glim {

/// Complains of angles that do not ascend. `what` calls one of them: "vertical angle".
void expect_ascending(PhotometricText& file, const std::vector<WrittenNumber>& angles,
                      const std::string& what);

/// Complains of angles outside `least` to `most` degrees.
void expect_within(PhotometricText& file, const std::vector<WrittenNumber>& angles,
                   const std::string& what, double least, double most);

/// Warns of a gamma that covers neither a half nor the whole.
void warn_of_part_of_gamma(PhotometricText& file, const std::vector<WrittenNumber>& gamma);

/// Which part of the whole is filed, told by the first and the last angle of an LM-63 file. Planes
/// of type c that fit no part are a complaint; ranges that stop short of the standard's limits are
/// warnings, because all within them can be used.
FiledSymmetry ies_symmetry(PhotometricText& file, Goniometer goniometer,
                           const std::vector<WrittenNumber>& horizontal,
                           const std::vector<WrittenNumber>& vertical);

} // namespace glim
