#pragma once

#include "model/costs.h"

#include <vector>

namespace glim {

// Money is in the user's own currency. Ranges are added and multiplied end by end: all that is low
// with all that is low, which gives the widest range. Nothing here is filled in for the user.

Range operator+(const Range& a, const Range& b);
Range operator*(const Range& a, const Range& b); ///< neither has an end below 0

/// One entry of an option's cost, and how its money comes about.
struct CostLine {
    CostEntry entry = CostEntry::parts;
    std::optional<Range> given; ///< as the user gives it: money, hours or changes
    std::optional<Range> rate;  ///< of a counted entry: what one of them costs
    std::optional<Range> money; ///< none where it is not known
};

/// What an option costs, so far as that is known.
struct CostSum {
    std::vector<CostLine> lines;    ///< one an entry, in the order of cost_entry_words
    std::vector<CostEntry> missing; ///< left out of every sum below
    Range a_vehicle;                ///< the known entries that count for each vehicle
    Range once;                     ///< the known entries that count once
    std::optional<Range> vehicles;  ///< volume x years; none where one of them is not known
    /// Both, where the number of vehicles is known: over the programme, and for each vehicle with
    /// its part of what counts once.
    std::optional<Range> programme, all_in;

    bool complete() const { return missing.empty(); }
};

CostSum cost_sum(const CostFigures& figures, bool others_cost_nothing, const Programme& programme);

} // namespace glim
