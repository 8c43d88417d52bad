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

/// The sentence of one check.
std::string margin_sentence(const CheckMargins& check, const MarginFindings& found,
                            const Study& study);
/// "3.3 mm rearward", "not within 20 mm"; of both senses where both change the outcome.
std::string margin_moves_words(const SurfaceMargin& margin, const MarginFindings& found);
/// What a mm costs: "40.1 mm2 a mm outward", told in the sense that loses.
std::string margin_gain_words(const SurfaceMargin& margin);
/// Which surfaces change nothing; empty if there are none.
std::string margin_idle_words(const MarginFindings& found, const Study& study);
/// What the figures stand on.
std::string margin_note(const MarginFindings& found);

/// "fore and aft", "normal offset"
std::string_view words_of(MarginWay way);
/// "forward", "rearward", "outward" and so on: along the way, or against it.
std::string_view sense_of(MarginWay way, bool along);

} // namespace glim
