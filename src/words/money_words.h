#pragma once

#include "model/costs.h"

#include <string>

namespace glim {

/// A number for people, its thousands parted by commas: "214,000", "21.5". At most two decimals.
std::string grouped(double number);

/// "214,000", or "214,000 (154,000 to 294,000)" where it is a range.
std::string range_words(const Range& range);

/// The same with the currency behind the likely sum: "214,000 EUR (154,000 to 294,000)".
std::string money_words(const Range& range, const std::string& currency);

} // namespace glim
