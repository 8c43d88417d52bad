#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace glim {

/// A step from one numbered point to another.
struct LineStep {
    std::uint64_t from, to;
};

struct ChainedLine {
    std::vector<std::uint64_t> points; ///< a closed line does not repeat its first
    bool closed = false;
};

/// Joins steps end to start, each used once: first the open lines, then the closed ones. The same
/// steps in the same order give the same lines.
std::vector<ChainedLine> chained(std::span<const LineStep> steps);

} // namespace glim
