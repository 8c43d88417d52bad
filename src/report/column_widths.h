#pragma once

#include <vector>

namespace glim {

/// What a column of a table would take.
struct ColumnNeeds {
    double least = 0;   ///< its longest word on one line
    double natural = 0; ///< its longest cell on one line; at least `least`
};

/// Widths that fill `available` to the last point. Where there is room for all, what is left over
/// is shared by what they take; else every column gets its least, and the rest is shared by what
/// is missing; where even that is too much, all shrink alike, and words break.
std::vector<double> column_widths(const std::vector<ColumnNeeds>& needs, double available);

} // namespace glim
