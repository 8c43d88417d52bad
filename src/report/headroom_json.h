#pragma once

#include "remedy/headroom.h"
#include "report/json.h"

namespace glim {

/// The headroom of every surface, as a part of what `keep-clear` tells.
Json headroom_json(const std::vector<Headroom>& headroom, const KeepClear& found,
                   const Study& study);

/// A row a surface.
std::string headroom_csv(const std::vector<Headroom>& headroom, const KeepClear& found,
                         const Study& study);

/// A row a surface and space that it counts for.
std::string headroom_by_space_csv(const std::vector<Headroom>& headroom, const KeepClear& found,
                                  const Study& study);

} // namespace glim
