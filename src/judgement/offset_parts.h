#pragma once

#include "judgement/build_moves.h"
#include "machine/workers.h"

namespace glim {

/// Surfaces with a profile tolerance, offset along their normals in steps and made ready for rays.
/// A build takes the nearest step, so that an offset is off by at most half of one.
class OffsetParts {
public:
    /// `widest` as BuildMoves has it. Throws Stopped.
    OffsetParts(const Study& study, const PreparedScene& scene, const BuildMoves& moves,
                const Extents& widest, const Workers& workers);

    /// The surface for rays as drawn (see PreparedScene::part_of), at the nearest step.
    const std::shared_ptr<const PreparedPart>& part(SurfaceId surface, Length offset) const;
    /// Between steps; 0 for a surface without a profile tolerance.
    Length step(SurfaceId surface) const { return ladders_[surface].step; }
    Length widest_step() const;

private:
    struct Ladder {
        Length step;
        std::vector<std::shared_ptr<const PreparedPart>> parts; ///< from the farthest in to out
    };
    const PreparedScene& scene_;
    Slots<SurfaceId, Ladder> ladders_;
};

} // namespace glim
