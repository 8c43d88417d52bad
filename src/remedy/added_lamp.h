#pragma once

#include "remedy/candidate_facets.h"
#include "remedy/lens_fit.h"

namespace glim {

/// A place that was worked out: a real lens there, measured and checked.
struct AddedPlace {
    AddedLens lens; ///< its mesh, and the surface that carries it
    LensSeat seat;
    Length width, height; ///< of the outline, as seen against the lens
    Area face;            ///< of the lens itself, along the surface
    /// So wide it was not enough; none where the smallest tried was.
    std::optional<Length> too_small;
    Length along_surface; ///< from the lamp that it helps: see distances_along
    Length behind_nose;   ///< of its centre, behind the foremost point of the vehicle
    Area in_sight;        ///< on the mean over level directions all around
    /// The outcomes of the checks asked, by a check of this lamp alone; of a lamp that fills a gap,
    /// of both, where the rules let lamps answer together. Empty where they do not: then the areas
    /// were measured in the failing directions, and no check can confirm them.
    std::vector<Outcome> outcomes;
};

/// How the candidates fared. The first three that are told of a candidate exclude each other.
struct CandidateCounts {
    std::size_t all = 0;
    std::size_t no_room_by_rules = 0; ///< the rows of place leave none there
    std::size_t serve_none = 0;       ///< faces no failing direction, or is hidden in all of them
    std::size_t serve_some = 0;       ///< not all
    std::size_t serve_all = 0;        ///< every failing direction, at a size allowed
    std::size_t alone = 0;            ///< every direction of every row, at a size allowed
};

/// What a row of light asks: sizes cannot answer it.
struct LightAsked {
    RuleRow row;
    std::optional<Intensity> everywhere; ///< in every direction of its field; else by a table
};

/// Several lamps that fill the gap between them.
struct LampCover {
    std::vector<std::size_t> facets; ///< places among the candidates
    bool is_fewest = false;          ///< proved; else the greedy choice
};

struct AddedLampAnswer {
    std::vector<std::size_t> checks; ///< places in the study's: those not met without it
    LampId helped;
    Lamp lamp;                     ///< what is added, without its surfaces
    std::size_t missing = 0;       ///< failing directions looked at
    Angle step;                    ///< how finely candidates were looked at
    std::vector<AddedPlace> alone; ///< meet every row alone; the best first
    /// The outcomes of the checks asked of all their lamps, with the best of these added.
    std::vector<Outcome> confirmed;
    std::vector<AddedPlace> filling; ///< only where the rules let lamps answer together
    std::optional<LampCover> cover;  ///< where no single place fills the gap
    CandidateCounts counts;
    std::vector<CandidateFacet> candidates;
    std::vector<LightAsked> light;
    std::vector<std::string> by_tables; ///< what the tables say of added lamps
    bool nothing_to_do() const { return checks.empty(); }
};

/// Looks for places where one more lamp would make the task's checks be met. `findings` are those
/// of the task's checks, in its order, as `session` gives them. Throws InputError where no row of
/// an unmet check speaks of such a lamp, or where nothing can carry it; Stopped.
AddedLampAnswer find_added_lamp(const Session& session, const AddLampTask& task,
                                const Findings& findings, const Workers& workers);

} // namespace glim
