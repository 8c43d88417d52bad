#include "model/study.h"

#include <algorithm>

namespace glim {

const GroundState* Study::ground_in(std::string_view state) const
{
    const auto found = std::find_if(grounds.begin(), grounds.end(),
                                    [&](const GroundState& g) { return g.state == state; });
    return found == grounds.end() ? nullptr : &*found;
}

} // namespace glim
