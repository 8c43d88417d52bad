#pragma once

#include "model/source_file.h"

#include <string_view>

namespace glim {

/// The size and the SHA-256 digest of what a file held.
FileIdentity identity_of(std::string_view bytes);

} // namespace glim
