#pragma once

#include <cstdint>
#include <vector>

namespace glim {

// Which columns of the lit face to free in which direction, and how deep, so that the volume pushed
// in is small. A problem in numbers only: depths in mm, areas in mm2, volumes in mm3.

/// A point of the surface that a demand asks to go `base + depth` deep, no further than `most`, by
/// the deepest of the columns from `first` to `last`.
struct ChoicePoint {
    static constexpr std::uint32_t none = ~std::uint32_t{0};

    std::uint32_t point;       ///< place in ChoiceProblem::area
    std::uint32_t first, last; ///< columns
    std::uint32_t column;      ///< the one that its cost is put down to; or none
    float base, most;
};

struct ChoiceColumn {
    /// What is seen in it at each level of depth, levels + 1 of them, growing.
    std::vector<float> seen;
    /// No level above this may be chosen.
    std::uint32_t highest = 0;
};

/// One direction: what has to be seen, over its columns together.
struct ChoiceDemand {
    double needed = 0;
    std::vector<ChoiceColumn> columns;
    std::vector<ChoicePoint> points;
};

struct ChoiceProblem {
    double step = 0;          ///< between levels of depth, mm
    std::vector<double> area; ///< that each point stands for
    std::vector<ChoiceDemand> demands;
};

/// For each demand the depth of each of its columns, mm.
using ChosenDepths = std::vector<std::vector<double>>;

/// Every demand by itself: all columns alike, as shallow as suffices.
std::vector<double> depth_ordered_choice(const ChoiceDemand& demand, double step_mm);
ChosenDepths depth_ordered_choice(const ChoiceProblem& problem);

/// The same improved: demand after demand, from the deepest on, and again until nothing is gained,
/// each takes the columns that add least volume to what the others ask for. What a demand takes is
/// least for it alone, but for its last column; that all of them together are least is not
/// promised: the test measures how far off they are. Never more volume than the depth-ordered one.
ChosenDepths improved_choice(const ChoiceProblem& problem);

/// What points ask for under a choice, and what it adds up to.
std::vector<double> depths_under(const ChoiceProblem& problem, const ChosenDepths& chosen);
double volume_under(const ChoiceProblem& problem, const ChosenDepths& chosen);

/// What a demand sees with these depths of its columns; straight between levels.
double seen_under(const ChoiceDemand& demand, double step_mm, const std::vector<double>& depths);

} // namespace glim
