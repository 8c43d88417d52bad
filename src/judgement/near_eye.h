#pragma once

#include "judgement/offset_parts.h"
#include "visibility/near_look.h"

namespace glim {

/// What builds are made of; all outlive whoever holds it.
struct BuildGround {
    const Study& study;
    const PreparedScene& scene;
    const BuildMoves& moves;
    const OffsetParts& parts;
    const Extents& widest; ///< see BuildMoves
};

/// One lamp, prepared for being looked at in build after build from the same directions. What of it
/// moves as one is looked at as one, in its own frame.
class NearEye {
public:
    /// `hidden_too`: whether what the lamp itself and the approved leave will be asked. Throws
    /// Stopped.
    NearEye(const BuildGround& ground, const LampStanding& lamp,
            const std::vector<Direction>& toward, bool hidden_too, const Workers& workers);

    /// What stands before each piece in one build.
    struct Before {
        struct Piece {
            StrayedBodies all;
            StrayedBodies approved; ///< the lamp itself and what was approved with it, if asked
        };
        std::vector<Piece> pieces;
    };
    Before before(const BuildPlaces& places) const;

    /// Toward the direction at that place in the constructor's list.
    Area visible(const Before& before, std::size_t direction,
                 RimSearch search = RimSearch::quick) const;
    /// No more than visible() gives, and found in no time.
    Area surely_visible(const Before& before, std::size_t direction) const;
    /// Hidden only by the lamp itself and by what was approved with it. Requires: `hidden_too`.
    Area approved(const Before& before, std::size_t direction,
                  RimSearch search = RimSearch::quick) const;

private:
    using Companions = std::vector<Standing>; ///< surfaces that move as one
    struct Piece {
        Standing stands; ///< the first of its surfaces: all move alike
        std::vector<Companions> obstacles, approved;
        std::vector<NearLook> looks, approved_looks; ///< one a direction
    };
    Piece piece_of(const LampStanding& lamp, const std::vector<SurfaceId>& surfaces) const;
    bool moves_with(const Piece& piece, const Standing& standing) const;
    Flock flock_of(const Piece& piece, const Companions& companions) const;
    /// A lit face, scene frame, and how coarsely it is looked at.
    struct Lattice {
        const TriangleMesh& lit;
        Length pitch;
    };
    std::vector<NearLook> looks_of(const Piece& piece, const Lattice& lattice,
                                   const std::vector<Companions>& obstacles,
                                   const Workers& workers) const;
    Straying straying_of(const Standing& standing, const BuildPlaces& places) const;
    StrayedBodies strayed(const Piece& piece, const std::vector<Companions>& obstacles,
                          const BuildPlaces& places) const;

    BuildGround ground_;
    std::vector<Direction> toward_;
    std::vector<Piece> pieces_;
};

} // namespace glim
