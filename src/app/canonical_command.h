#pragma once

#include "app/requests.h"

#include <string>

namespace glim {

/// What to type in the study's folder to get the same results: without the options that change
/// none (--out, --threads, --json, --quiet). Quoted for a POSIX shell where a name needs it.
std::string canonical_command(const CheckRequest& request);

} // namespace glim
