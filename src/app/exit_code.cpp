#include "app/exit_code.h"

#include <algorithm>

namespace glim {

ExitCode exit_code_of(const Findings& findings)
{
    const auto any = [&](Outcome outcome) {
        return std::any_of(findings.checks.begin(), findings.checks.end(),
                           [&](const CheckFindings& c) { return c.outcome == outcome; });
    };
    if (any(Outcome::not_met))
        return ExitCode::not_met;
    const bool all_met =
        std::all_of(findings.checks.begin(), findings.checks.end(),
                    [](const CheckFindings& c) { return c.outcome == Outcome::met; });
    return all_met ? ExitCode::met : ExitCode::open;
}

} // namespace glim
