#pragma once

#include <optional>
#include <string>

namespace glim {

/// The day that a report bears: the one asked for, or "today" by the clock; else, for who builds
/// the same bytes again, the one that SOURCE_DATE_EPOCH names in seconds since 1970, if it names
/// any; else none. Throws InputError if that is no such number. Requires: what is asked for is a
/// day or "today".
std::string report_day(const std::optional<std::string>& asked,
                       const std::optional<std::string>& source_date_epoch);

/// What the environment says of SOURCE_DATE_EPOCH; none if it is not set.
std::optional<std::string> source_date_epoch();

} // namespace glim
