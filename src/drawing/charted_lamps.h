#pragma once

#include "judgement/findings.h"

#include <optional>
#include <vector>

namespace glim {

/// One lamp under one row of a check, by places.
struct ChartedLamp {
    std::size_t check = 0; ///< in Findings::checks
    std::size_t row = 0;   ///< in CheckFindings::rows
    std::size_t lamp = 0;  ///< in verdicts_of() of that row
    friend bool operator==(const ChartedLamp&, const ChartedLamp&) = default;
};

const LampVerdict& verdict_at(const Findings& findings, const ChartedLamp& place);

/// What charts and pictures of a check are about first: the verdict that decided if it looks in
/// directions, else the worst that does, of the rows that the maker chose. None if none does.
std::optional<ChartedLamp> foremost_charted(const Findings& findings, std::size_t check);

/// The lamps that charts and pictures show: of a check those that the row of the foremost applies
/// to, without mirror images, which see much the same; but with the foremost, whichever it is.
std::vector<ChartedLamp> charted_lamps(const Findings& findings, std::size_t check);

/// Those of every check.
std::vector<ChartedLamp> charted_lamps(const Findings& findings);

} // namespace glim
