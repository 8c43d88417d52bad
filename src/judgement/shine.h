#pragma once

#include "judgement/findings.h"

namespace glim {

/// What a look's lamps are known to shine, before it is looked at; none where one of them has no
/// photometric file.
std::optional<LookLight> new_light(const Study& study, const std::vector<LampStanding>& lamps);

/// One lamp's light, ready to be asked.
struct Shining {
    const LampLight* light; ///< lives as long as the study
    Eigen::Matrix3d file_from_lamp;
};
/// Nothing where the lamp has no photometric file. `axis` is what the look counts H from.
std::optional<Shining> shining(const Study& study, const LampStanding& lamp, ReferenceAxis axis);

/// Adds one lamp, of which `seen` is what that direction sees, to what its look shines there.
void add_light(LightToward& sum, const Shining& lamp, const Bearing& toward, const SeenArea& seen);

} // namespace glim
