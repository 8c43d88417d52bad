#pragma once

#include "judgement/findings.h"
#include "remedy/break_even.h"
#include "remedy/surface_change.h"

namespace glim {

/// One variant, as it was judged and measured against the first.
struct JudgedOption {
    std::string name;
    std::string file; ///< its study
    Findings findings;
    std::vector<std::string> lamps_added, surfaces_added; ///< that the first has not
    std::vector<std::string> lamps_gone, surfaces_gone;   ///< that only the first has
    std::vector<SurfaceChange> changes;                   ///< against the first
    CostSum cost;
};

struct BreakEvenBetween {
    std::size_t one = 0, other = 0; ///< places among the options; one < other
    BreakEven even;
    /// Entries that one of the two does not know: they are left out on its side alone.
    std::vector<CostEntry> one_missing, other_missing;
};

/// Options side by side.
struct Comparison {
    Programme programme;
    std::vector<std::string> checks; ///< names, each once, in the order in which options ask them
    std::vector<JudgedOption> options;
    std::vector<BreakEvenBetween> break_evens; ///< every two
};

/// One option and what it was read from; `findings` are those of `study`.
struct OptionToCompare {
    std::string name;
    std::string file; ///< its study, as results call it
    const Study& study;
    Findings findings;
    CostFigures costs = {};
    bool others_cost_nothing = false;
};

/// Requires: at least one option. The first is what the others are measured against. Throws
/// Stopped.
Comparison compare(std::vector<OptionToCompare> options, const Programme& programme,
                   const Workers& workers = {});

/// The option's answer to the check of that name; none where it does not ask it.
const CheckFindings* answer_of(const JudgedOption& option, std::string_view check);

} // namespace glim
