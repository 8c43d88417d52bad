#pragma once

#include "judgement/plan.h"
#include "machine/workers.h"

namespace glim {

/// A plan's lamps made ready to be looked at, one or more views a look.
class Eyes {
public:
    Eyes(const PreparedScene& scene, const Plan& plan, const Sampling& sampling);

    /// Fills every look's `seen`. Throws Stopped.
    void see(Plan& plan, const Workers& workers) const;
    /// Asks the exact areas on which verdicts still hang, until none does. Throws Stopped.
    void settle(Plan& plan, const Workers& workers) const;

    /// What the look's obstacles take toward one direction; names the same surface once.
    std::vector<std::pair<Standing, TakenArea>> taken(std::size_t look,
                                                      const Direction& toward) const;

private:
    struct Eye {
        LampView view;
        ExactView exact;
        std::vector<Standing> obstacles;
    };

    void ask_exactly(LampLook& look, std::size_t place, const std::vector<std::size_t>& at,
                     const Workers& workers) const;
    void settle(const RuleRow& row, const Asked& asked, Plan& plan, const Workers& workers) const;

    std::vector<std::vector<Eye>> eyes_; ///< one list a look
};

} // namespace glim
