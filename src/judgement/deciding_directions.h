#pragma once

#include "judgement/build_design.h"
#include "judgement/build_runs.h"

namespace glim {

/// Where trial builds come from; all outlive it.
struct TrialBuilds {
    const BuildMoves& moves;
    const Study& study;
    const BuildDesign& design;
};

/// Of each followed verdict the directions in which it stands worst in some trial builds: as drawn,
/// with each factor alone at either limit, and with the first builds of the design. Places in the
/// looks, ascending; at most `most` of each.
std::vector<std::vector<std::size_t>> deciding_directions(const BuiltLooks& looks,
                                                          const TrialBuilds& trials,
                                                          std::size_t most, const Workers& workers);

} // namespace glim
