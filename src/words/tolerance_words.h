#pragma once

#include "judgement/tolerance_findings.h"
#include "model/study.h"
#include "words/text_block.h"

#include <string>

namespace glim {

/// What builds within tolerances show, for people: shares, what decides, the worst stack-up, who
/// contributes how much, and how large a tolerance may be.
std::string tolerances_words(const ToleranceFindings& found, const Study& study,
                             const TextStyle& style = {});

/// "Of 4096 builds 97.2 % (96.6 to 97.7 %) meet every check; ...", and whether that is enough for
/// `wanted`, the share of builds that are to meet them.
std::string tolerances_sentence(const ToleranceFindings& found, double wanted);

/// "97.2 % (96.6 to 97.7 %)"
std::string share_of_builds_words(const ShareOfBuilds& share);

/// "indicator, left; row across-45"
std::string tolerated_verdict_words(const ToleratedVerdict& verdict,
                                    const ToleranceFindings& found);

/// Where the row's figures come from, and whether they were read there.
std::string rule_source_words(const ToleratedVerdict& verdict, const ToleranceFindings& found);

/// "lamp unit", "lamp unit: up", "all parts", "all installation"
std::string contributor_words(const Contributor& contributor, const Study& study);

/// The same below a line that names the tolerance: of a way "up" alone.
std::string contributor_label(const Contributor& contributor, const Study& study);

/// "41.2 % (38 to 44 %)"; of a small negative estimate 0.
std::string variance_words(const Estimate& estimate);

/// A line for each tolerance: "lamp in the front module: 1 mm rearward, turned 0.3 deg forward end
/// up".
std::vector<std::string> stack_up_words(const StackUp& stack, const ToleranceFindings& found,
                                        const Study& study);

/// What the spread of a verdict's figure is.
std::string figure_spread_words(const ToleratedVerdict& verdict);

/// From where the figure was worst, and how often.
std::string deciding_words(const ToleratedVerdict& verdict, const ToleranceFindings& found);

/// How large the tolerance that was asked about may be.
std::string needed_tolerance_words(const NeededTolerance& needed, const Study& study);

/// What these figures stand on and leave out, a sentence each.
std::vector<std::string> tolerance_cautions(const ToleranceFindings& found);

} // namespace glim
