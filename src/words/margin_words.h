#pragma once

#include "judgement/surface_margins.h"
#include "words/text_block.h"

#include <string>

namespace glim {

/// The answer for people: for each check how far each surface may go, or has to; what a mm of it
/// changes; then the caution.
std::string margin_words(const MarginFindings& found, const Study& study,
                         const TextStyle& style = {});

/// A sentence for each check: "`across the nose` is met; along its normal `nose` has 1.4 mm, ..."
std::string margin_sentences(const MarginFindings& found, const Study& study,
                             const TextStyle& style = {});

/// "forward", "rearward", "outward" and so on: along the way, or against it.
std::string_view sense_of(MarginWay way, bool along);

} // namespace glim
