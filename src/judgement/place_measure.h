#pragma once

#include "judgement/findings.h"
#include "judgement/lamp_gap.h"
#include "judgement/place.h"

namespace glim {

/// A lamp as it stands, to be measured.
struct StandingLamp {
    LampStanding standing;
    TriangleMesh lit; ///< vehicle frame
    Direction axis;
};
StandingLamp standing_lamp(const Study& study, const PreparedScene& scene,
                           const LampStanding& standing, ReferenceAxis axis);

/// The lamp that makes a pair with this one: its mirror image, or one of the same function drawn on
/// the other side. Nothing if the study has none.
std::optional<LampStanding> partner_of(const Study& study, const LampStanding& lamp);

/// To the nearest lamp of one of these functions. Nothing if the study has none.
struct NearestLamp {
    LampId lamp;
    GapBetween gap;
};
std::optional<NearestLamp> nearest_lamp(const Study& study, const PreparedScene& scene,
                                        const StandingLamp& lamp, const GapToLamp& asked,
                                        ReferenceAxis axis);

} // namespace glim
