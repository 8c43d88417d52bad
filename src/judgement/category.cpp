#include "judgement/category.h"

#include <algorithm>

namespace glim {

std::vector<std::string> may_follow(const GapToLamp& gap, const LampVerdict& measured)
{
    std::vector<std::string> possible;
    for (std::size_t i = 0; i < gap.steps.size(); ++i) {
        if (!measured.follows.empty()) {
            const Measurement& m = measured.measured.front();
            // Steps run from the widest down: each holds from its limit up to that of the one
            // before.
            const bool too_wide =
                i > 0 && m.figure - m.accuracy >= in_mm(gap.steps[i - 1].at_least);
            if (too_wide || m.figure + m.accuracy < in_mm(gap.steps[i].at_least))
                continue;
        }
        possible.push_back(gap.steps[i].follows);
    }
    return possible;
}

CategoryByGap category_by_gap(const GapToLamp& gap, const LampVerdict& measured,
                              const std::string& declared)
{
    CategoryByGap category{.declared = declared, .possible = may_follow(gap, measured), .gap = {}};
    if (measured.measured.empty())
        return category;
    category.gap = measured.measured.front();
    const bool known = std::any_of(gap.steps.begin(), gap.steps.end(),
                                   [&](const GapStep& s) { return s.follows == declared; });
    category.contradicts = !declared.empty() && (!known || measured.outcome == Outcome::not_met);
    return category;
}

bool asks_for_category(const std::vector<Condition>& conditions)
{
    return std::any_of(conditions.begin(), conditions.end(),
                       [](const Condition& c) { return c.quantity == Measured::lamp_category; });
}

} // namespace glim
