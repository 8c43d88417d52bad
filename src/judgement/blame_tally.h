#pragma once

#include "judgement/facet_sums.h"
#include "judgement/findings.h"
#include "judgement/surface_taken.h"

namespace glim {

/// The patch of a surface is the box about those facets that take this share of what it takes; the
/// rest are strays at the rim of the shadow, which would make the box large and its centre wrong.
inline constexpr double patch_share = 0.99;

/// Gathers what takes the light of one verdict's lamp, direction by direction.
///
///     BlameTally tally;
///     tally.add({.worst = true, .fails = true}, eyes.taken(look, toward));
///     verdict.blockers = tally.blockers(study, scene);
class BlameTally {
public:
    struct Counts {
        bool worst = false; ///< it is the worst direction
        bool fails = false; ///< it is one of those that the means are over
    };
    /// Every call names the same surfaces in the same order.
    void add(Counts counts, const std::vector<SurfaceTaken>& taken);

    /// Surfaces that take something to speak of, those first that take most on the mean of the
    /// directions that fail, then at worst; `scene` tells where facets stand.
    std::vector<Blocker> blockers(const Study& study, const PreparedScene& scene) const;

private:
    struct OfFacet {
        FacetArea at_worst, failing;
    };
    struct OfSurface {
        Standing standing;
        TakenArea at_worst, failing;
        FacetSums<OfFacet> facets;
    };

    void add_facets(OfSurface& surface, Counts counts, const SurfaceTaken& taken) const;
    Blocker blocker(const OfSurface& surface) const;
    std::vector<FacetShare> ranked_facets(const OfSurface& surface,
                                          const PreparedScene& scene) const;

    std::vector<OfSurface> surfaces_;
    std::size_t failing_ = 0; ///< directions
};

} // namespace glim
