#pragma once

#include "remedy/added_lamp_needs.h"
#include "remedy/lens_patch.h"

#include "judgement/session.h"

namespace glim {

/// A facet of the body as a place for an added lamp: what a lens lying on it could show, as far as
/// the facet's centre tells.
struct CandidateFacet {
    SurfaceId surface;
    std::uint32_t facet = 0;
    Point centre = Point::Zero(); ///< vehicle frame
    Vector normal = Vector::Zero();
    Area size;
    bool may_stand = true;    ///< the rows of place leave room there
    std::uint32_t serves = 0; ///< of the failing directions: so many see it at a size allowed
    /// The least lens that shows enough in every direction asked, slant counted; none where some
    /// see nothing of it, or where it would be larger than allowed.
    std::optional<Area> alone;
    std::optional<Area> filling; ///< the same of what is missing in the failing directions
};

/// Every facet of the carriers on the lamp's side, within the boxes. By surface, then by facet.
std::vector<CandidateFacet> candidate_facets(const Study& study, const AddLampTask& task,
                                             const Lamp& lamp);

/// Fills in what each candidate shows: one ray a direction and candidate from the facet's centre,
/// and one from its mirror image where the lamp has a twin that may see something else.
/// Returns, for each candidate, which failing directions it serves (places in `needs.missing()`).
/// Throws Stopped.
struct WeighedCandidates {
    std::vector<CandidateFacet> facets;
    std::vector<std::vector<bool>> serves; ///< one a candidate
};
WeighedCandidates weighed(std::vector<CandidateFacet> candidates, const Session& session,
                          const AddedLampNeeds& needs, Area largest, const Workers& workers);

} // namespace glim
