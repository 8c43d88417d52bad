#pragma once

#include "bench/figures.h"

#include <functional>

namespace glim::bench {

struct Outcome {
    std::vector<Figure> figures;
    std::size_t peak_bytes = 0; ///< the most memory that the process had at any time
};

/// Measures in a process of its own, so that the memory of one measure never counts for another.
/// Requires: the caller has one thread. Throws std::runtime_error if that process fails.
Outcome in_own_process(const std::function<std::vector<Figure>()>& measure);

} // namespace glim::bench
