#pragma once

#include "judgement/findings.h"

#include <optional>
#include <vector>

namespace glim {

/// One lamp under one row of a check, by places.
struct LampPlace {
    std::size_t check = 0; ///< in Findings::checks
    std::size_t row = 0;   ///< in CheckFindings::rows
    std::size_t lamp = 0;  ///< in verdicts_of() of that row
    friend bool operator==(const LampPlace&, const LampPlace&) = default;
};

const LampVerdict& verdict_at(const Findings& findings, const LampPlace& place);

/// The row of a check that is shown in charts: the one that decided if it looks in directions, else
/// the worst that does. None if none does.
std::optional<std::size_t> charted_row(const CheckFindings& check);

/// The lamps that a report shows in charts: of every check those that the charted row applies to,
/// without mirror images, which see much the same; but with the one that decided, whichever it is.
std::vector<LampPlace> charted_lamps(const Findings& findings);

} // namespace glim
