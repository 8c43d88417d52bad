#pragma once

#include "judgement/situations.h"
#include "words/text_block.h"

#include <string>
#include <vector>

namespace glim {

// States of the vehicle and parts that are moved, for people.

/// "as the rule has it", "boot full", "bonnet: open"
std::string situation_label(const Situation& situation, const Study& study);

/// "verdict" or "information"
std::string_view standing_words(const Situation& situation);

/// Of a state: "unladen, 15 mm lower, nose 0.9 deg up"; "its own ground"; "as rules know it".
std::string ground_words(const GroundState& ground);

/// How high the centres of the lamps asked stand above the ground: "712 mm", "640 to 712 mm"; empty
/// where nothing applies.
std::string height_words(const CheckFindings& check, const std::vector<LampLook>& looks);

/// What was found of a lamp: "784.2 mm2 from H -45, V -15"; of rows of a share "38.2 % hidden, 50 %
/// may be".
std::string verdict_figure_words(const RowFindings& row, const LampVerdict& verdict,
                                 const LampLook& look);

/// The same of what decides the check; empty where nothing does.
std::string deciding_figure_words(const CheckFindings& check, const std::vector<LampLook>& looks);

/// Where a row asks another field of a lamp than as the rule has it, or begins or ceases to ask: a
/// sentence each.
std::vector<std::string> changed_demands(const SituationFindings& found, const Study& study);

/// The verdicts, and in what situations an outcome differs; a few sentences.
std::string situations_sentence(const SituationFindings& found, const Study& study);

/// All of it, with the caution.
std::string situations_words(const SituationFindings& found, const Study& study,
                             const TextStyle& style = {});

} // namespace glim
