#pragma once

#include "drawing/figure.h"
#include "remedy/moved_lamp.h"

namespace glim {

/// The moves of a map as cells: met or not by how much; hatched where not met; a cross where the
/// lamp is drawn, a ring at the least move found, where that lies on the map. 400 by 300 points.
Figure move_map_chart(const MoveMap& map, const MovedLampAnswer& answer, const Study& study);

} // namespace glim
