#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace glim {

/// No number of a photometric file is larger than this, either way: more is damage.
inline constexpr double largest_photometric_number = 1e9;

/// Whether 12,5 is a number (EULUMDAT) or two (LM-63, where a comma divides).
enum class DecimalComma { refused, allowed };

/// The whole word as a decimal number within the range above; a leading + is allowed. Reads the
/// same on every machine and in every language. Nothing if it is anything else.
std::optional<double> photometric_number(std::string_view word,
                                         DecimalComma comma = DecimalComma::refused);

/// The same if it is a whole number.
std::optional<int> whole_photometric_number(std::string_view word);

/// What people wrote, as UTF-8: bytes that are no UTF-8 are taken for ISO 8859-1 (Latin-1), in
/// which such files are written. Control characters become blanks.
std::string note_text(std::string_view bytes);

} // namespace glim
