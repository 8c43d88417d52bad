#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace glim {

// Days in universal time, written as ISO 8601 has them: "2026-01-02".

/// The day that so many seconds after the beginning of 1970 belong to. None before that, and none
/// after the year 9999.
std::optional<std::string> day_of_seconds(long long seconds);

/// Whether the words are a day that exists.
bool is_day(std::string_view words);

/// The day by the machine's clock. The one place where the program asks it; only for who wants it.
std::string today();

} // namespace glim
