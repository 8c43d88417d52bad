#pragma once

#include "app/requests.h"

#include <string>

namespace glim {

/// What to type in the study's folder to get the same results: without the options that change
/// none (--out, --threads, --json, --quiet). Quoted for a POSIX shell where a name needs it.
std::string canonical_command(const CheckRequest& request);

/// `day` is what the report bears, wherever it comes from; empty: none. The folder is the user's.
std::string canonical_command(const ReportRequest& request, const std::string& day);

std::string canonical_command(const TolerancesRequest& request);
std::string canonical_command(const MarginsRequest& request);
std::string canonical_command(const StatesRequest& request);
std::string canonical_command(const KeepClearRequest& request);
std::string canonical_command(const SightLinesRequest& request);

} // namespace glim
