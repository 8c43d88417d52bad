#include "judgement/rank.h"

namespace glim {

Rank rank_of(const LampVerdict& verdict) { return {verdict.outcome, verdict.relative_margin}; }

Rank rank_of(const CheckFindings& check)
{
    return {check.outcome, check.deciding ? check.deciding_verdict().relative_margin : 0};
}

} // namespace glim
