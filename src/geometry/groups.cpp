#include "geometry/groups.h"

#include <numeric>

namespace glim {

Groups::Groups(std::size_t things) : above_(things) { std::iota(above_.begin(), above_.end(), 0U); }

std::uint32_t Groups::root_of(std::uint32_t thing)
{
    // Each step also halves the way for those who come later.
    while (above_[thing] != thing)
        thing = above_[thing] = above_[above_[thing]];
    return thing;
}

} // namespace glim
