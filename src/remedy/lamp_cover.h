#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace glim {

/// The fewest of several sets that hold every thing together.
struct SetCover {
    std::vector<std::size_t> sets; ///< places, ascending
    bool is_fewest = false;        ///< proved; else the greedy choice, which may be one too many
};

/// `sets[i][t]` says whether set i holds thing t. Of equally few the first by place. Sets that hold
/// no more than an earlier one are passed over. Proved for up to three sets where there are not too
/// many to try; nothing where all sets together do not hold everything.
std::optional<SetCover> fewest_sets(const std::vector<std::vector<bool>>& sets);

} // namespace glim
