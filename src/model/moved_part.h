#pragma once

#include "geometry/placement.h"
#include "model/surface.h"

#include <string>
#include <vector>

namespace glim {

/// Where a movable part can stay, such as a bonnet that is open.
struct PartPosition {
    std::string name; ///< unique in its part
    Placement move;   ///< vehicle frame, from where the part is drawn
};

/// A part that can be in the way although it is not where it is drawn: [[moved_part]] of a study.
/// In its positions a surface of role `ignored` counts as opaque, so that a part may be there in
/// them alone, such as a carrier. The twin of a surface moves as the mirror image.
struct MovedPart {
    std::string name; ///< unique among the moved parts
    std::vector<SurfaceId> surfaces;
    std::vector<PartPosition> positions; ///< not empty
};

} // namespace glim
