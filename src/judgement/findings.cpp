#include "judgement/findings.h"

#include <algorithm>

namespace glim {

Area LampLook::low(std::size_t at) const
{
    return exact[at] ? std::max(Area{}, exact[at]->visible - exact[at]->rounding) : seen[at].low;
}

Area LampLook::high(std::size_t at) const
{
    return exact[at] ? std::min(seen[at].lens, exact[at]->visible + exact[at]->rounding)
                     : seen[at].high;
}

const LampVerdict& CheckFindings::deciding_verdict() const
{
    const RowFindings& row = deciding_row();
    return deciding->together ? *row.together : row.lamps[deciding->lamp];
}

} // namespace glim
