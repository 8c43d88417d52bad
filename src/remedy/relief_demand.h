#pragma once

#include "judgement/findings.h"
#include "model/study.h"

namespace glim {

/// A direction in which a lamp, or lamps that answer together, show too little.
struct ReliefDemand {
    std::size_t check = 0; ///< place in Study::checks
    std::string row;
    std::size_t look = 0;
    Bearing bearing;
    Direction toward = Direction::x(); ///< vehicle frame
    Area seen;
    Area needed; ///< spare included
    /// How much more has to be seen than is, for the verdict to be sure whatever the figures and
    /// the meshes may be off.
    Area lacking;
    bool everything = false; ///< nothing that was not approved with the lamp may hide any of it
};

/// What the findings leave to be freed, so that the checks are met as far as areas go; a direction
/// that several rows ask of one look is there once, with the most that is asked. `checks` are the
/// places in the study of those that were judged.
///
/// Rows that ask for an area, or for a share of it, ask in directions that are not met or
/// undecided, or leave less to spare than the wish wants. Rows that ask for no obstacle ask in
/// directions that are not met; where a lamp is hidden in part, its photometric proof stays due.
/// Where one lamp of a side may answer alone, the one that stands best is helped.
std::vector<ReliefDemand> relief_demands(const Findings& findings, const Study& study,
                                         std::span<const std::size_t> checks);

} // namespace glim
