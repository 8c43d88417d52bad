#pragma once

#include "judgement/findings.h"
#include "words/text_block.h"

#include <vector>

namespace glim {

// One lamp under one row, item by item. Both require that the row applies to the lamp.

/// What is asked, what was found, how surely, what is in the way, who was asked, and where the
/// row's figures come from. The table of what is in the way is laid out.
std::vector<Labelled> verdict_entries(const RowFindings& row, const LampVerdict& verdict,
                                      const LampLook& look);

/// "indicator: front direction indicator, left; centre 792 mm above the ground (curb) ..."
std::string lamp_words(const LampLook& look);

} // namespace glim
