#pragma once

#include "judgement/findings.h"

#include <string>
#include <vector>

namespace glim {

// Rows and their verdicts in a few words each, for tables and lists.

/// Single lamps before those that answer together; a lamp that "together" consists of is not told
/// twice.
std::vector<const LampVerdict*> verdicts_of(const RowFindings& row);

/// The figure that the row is about: "784.2 mm2", "120 mm2 hidden", "512.3 mm"; "-" for none.
std::string figure_words(const RowFindings& row, const LampVerdict& verdict);

/// By how much it holds or fails: "-465.8 mm2", "+62.3 mm"; "-" where there is no figure.
std::string margin_words(const LampVerdict& verdict);

/// Where that is, in figures: "H -45, V -15"; or what follows from it: "gives b".
std::string place_words(const LampVerdict& verdict, const LampLook& look);

/// For a column: "not met", "proof due".
std::string short_words(Outcome outcome);

/// "1250 mm2 needed"
std::string needed_words(const RowFindings& row);

} // namespace glim
