#pragma once

#include <string_view>

namespace glim {

/// From now on, writing where nobody reads is an error that is told, not a silent death of the
/// program (SIGPIPE). For main().
void survive_broken_pipes();

/// Writes all of it to standard output. Throws std::system_error naming "standard output" if it is
/// closed, its disk is full, or its reader has gone.
void write_output(std::string_view text);

/// Writes to standard error; what cannot be written there cannot be told anywhere.
void write_error(std::string_view text);

} // namespace glim
