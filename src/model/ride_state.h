#pragma once

#include "geometry/placement.h"
#include "model/surface.h"
#include "model/vehicle.h"

namespace glim {

/// The vehicle as it stands with some load or ride height: [[state]] of a study. Information beside
/// the states of load by which rules judge.
struct RideState {
    std::string name; ///< unique among states
    Ground ground;
};

/// Where a movable part may be left.
struct PartPosition {
    std::string name;    ///< unique among the part's positions
    Placement placement; ///< vehicle frame from where the part was drawn
};

/// A bonnet, a flap, a carrier: [[moved_part]] of a study.
struct MovedPart {
    std::string name; ///< unique among movable parts
    std::vector<SurfaceId> surfaces;
    std::vector<PartPosition> positions;
};

} // namespace glim
