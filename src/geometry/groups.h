#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace glim {

/// Things numbered from 0, each at first alone, that are put together two at a time.
///
///     Groups groups(points.size());
///     groups.join(0, 2);
///     groups.together(0, 2);  // true
class Groups {
public:
    explicit Groups(std::size_t things);

    /// The groups of both become one.
    void join(std::uint32_t a, std::uint32_t b) { above_[root_of(b)] = root_of(a); }
    bool together(std::uint32_t a, std::uint32_t b) { return root_of(a) == root_of(b); }

    /// One of the group, the same for all of it until it is joined with another.
    std::uint32_t root_of(std::uint32_t thing);

private:
    std::vector<std::uint32_t> above_; ///< trees; a root stands above itself
};

} // namespace glim
