#pragma once

#include <vector>

namespace glim {

/// From which figure to which an axis or a bar runs, and how.
struct ChartScale {
    double least = 0, most = 0;
    /// In decades, for what spans many of them. Requires then: `least` is above 0.
    bool logarithmic = false;

    /// From 0 at `least` to 1 at `most`; beyond them beyond. On decades, what is not above 0 lies
    /// at the lower end.
    double share_of(double figure) const;
    double figure_at(double share) const;
    /// Round figures within it, at most so many where it is linear; on decades 1, or 1, 2 and 5, of
    /// each. Requires: most_ticks >= 2.
    std::vector<double> ticks(int most_ticks) const;
};

/// In decades from the one below `least` to the one above `most`. Requires: both above 0.
ChartScale whole_decades(double least, double most);

} // namespace glim
