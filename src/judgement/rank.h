#pragma once

#include "judgement/findings.h"

#include <utility>

namespace glim {

/// How well it stands, so that answers of all kinds can be compared: the outcome first, then the
/// relative margin. The least is the worst.
using Rank = std::pair<Outcome, double>;

Rank rank_of(const LampVerdict& verdict);

/// The check's own outcome, with the margin of the verdict that decided; 0 where none did.
Rank rank_of(const CheckFindings& check);

} // namespace glim
