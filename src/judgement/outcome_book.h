#pragma once

#include "judgement/built_looks.h"
#include "judgement/findings.h"

#include <map>

namespace glim {

/// What checks come to where the followed verdicts have these outcomes and all others stay as
/// drawn. Every pattern is judged once.
class OutcomeBook {
public:
    /// All outlive it.
    OutcomeBook(const BuiltLooks& looks, const Study& study, const PreparedScene& scene);

    /// One a check of the plan; `followed` one a followed verdict.
    const std::vector<Outcome>& of(const std::vector<Outcome>& followed);
    /// One a check, with what decides as drawn.
    const std::vector<CheckFindings>& as_drawn() const { return drawn_; }

private:
    Outcome judge(std::size_t check, const std::vector<Outcome>& followed) const;

    const BuiltLooks& looks_;
    const Study& study_;
    std::vector<CheckFindings> drawn_;
    std::map<std::vector<Outcome>, std::vector<Outcome>> known_;
};

/// Whether a build meets every check. Requires: it was looked at.
bool meets_all(const std::vector<BuildLook>& build, OutcomeBook& book);
/// The outcomes of its checks.
const std::vector<Outcome>& outcomes_of(const std::vector<BuildLook>& build, OutcomeBook& book);

} // namespace glim
