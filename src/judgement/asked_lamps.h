#pragma once

#include "judgement/findings.h"

namespace glim {

/// The lamps of a check, in the order in which every row's findings list them.
struct AskedLamps {
    /// As drawn, then the mirror images of paired ones: those asked, then those consulted.
    std::vector<LampStanding> standings;
    /// One a standing: it is not asked itself, but a rule depends on its result.
    std::vector<bool> consulted;
};

/// Mirror images are there only where they might see something else. Consulted are all further
/// lamps of the study that a rule below the check's names by function.
AskedLamps asked_lamps(const Study& study, const PreparedScene& scene, const Check& check);

/// How a row is reached from the check's rule.
struct Reached {
    bool directly = false;       ///< asked of the check's own lamps
    bool through_others = false; ///< below a rule that asks other lamps
};
/// Rows that only rules stand on which the vehicle's conditions pass over are not reached at all.
Reached reach_of_row(const Study& study, const Check& check, std::string_view row);

} // namespace glim
