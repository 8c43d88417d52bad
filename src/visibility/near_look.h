#pragma once

#include "visibility/flock.h"
#include "visibility/lamp_view.h"
#include "visibility/near_lattice.h"

namespace glim {

/// How closely rims are found along the edges of a lattice.
enum class RimSearch {
    quick, ///< each edge's by itself off by some tenths of a millimetre, which averages out
    close  ///< for what is compared with
};

/// One lamp toward one direction, prepared to be looked at over and over while the lit face and
/// what stands before it move a little.
///
/// What hides a corner is kept apart by flock: only where a flock's own shadow had a rim, on the
/// lit face or beside it, or came near the lit face, where it has strayed from, is it asked again
/// about corners; elsewhere it gives the answer that it gave as drawn. So the area is that of
/// visible_toward() with the same lattice, as long as moves keep to what they are said to be, up to
/// how rims are found. Things so thin that the fine lattice misses them as drawn may be missed near
/// them too.
class NearLook {
public:
    /// More flocks than that are taken as if the rest were one.
    static constexpr std::size_t most_flocks = 64;

    /// Needed while it is made, not afterwards. Scene frame, as drawn; of the views the casters are
    /// not asked.
    struct Prepared {
        const LampView& fine;   ///< tells where rims run
        const LampView& coarse; ///< with the lattice that is looked at
        std::span<const Flock> flocks;
        Angle turn; ///< by so much at most the lit face turns
    };
    /// Requires: no more than most_flocks.
    NearLook(const Prepared& lamp, const Direction& toward);

    /// Toward the constructor's direction in the scene frame. `strayed` no farther than the flocks'
    /// reach. Pure.
    Area visible(const StrayedBodies& strayed, RimSearch search = RimSearch::quick) const;

    /// No more than visible() gives, however rims are searched: without asking anybody.
    Area surely_visible(const StrayedBodies& strayed) const;

    /// How many corners are asked about for such a move, each flock's for itself, not counting
    /// those along rims.
    std::size_t corners(const StrayedBodies& strayed) const;

private:
    using Index = NearLattice::Index;
    /// One bit a flock: what hides a corner.
    using Hiders = std::uint64_t;

    /// A flock and the corners about which it may have to be asked.
    struct Watched {
        FlockBefore before;
        std::vector<Index> corners;
        PerSector<std::vector<float>> doubts; ///< one a corner, mm; see corner_doubts()

        /// Whether the corner at that place may be hidden otherwise after such a drift.
        bool may_change(std::size_t place, const Drift& drift) const;
    };
    struct Drawn;
    struct Work;
    struct RimOnEdge;

    NearLook(const Prepared& lamp, const Drawn& drawn);
    Drift drift(std::size_t flock, const StrayedBodies& strayed) const;
    Direction toward_as_built(const StrayedBodies& strayed) const;
    void ask_corners(Work& work, const StrayedBodies& strayed) const;
    void find_unsure(Work& work, const StrayedBodies& strayed) const;
    void ask_corners_of(std::size_t flock, bool hid, Work& work, const StrayedFlock& strayed) const;
    void find_rims(Work& work, const StrayedBodies& strayed) const;
    std::vector<RimOnEdge> edges_with_rims(const Work& work) const;
    void ask_middles(const std::vector<RimOnEdge*>& rims, const Work& work,
                     const StrayedBodies& strayed) const;
    double seen_mm2(const Work& work, const NearLattice::Cell& cell) const;

    ViewPlane plane_;
    Length touch_;
    Box lit_;
    NearLattice lattice_;
    std::vector<int> rounds_;    ///< of halvings, one an edge, where rims are found quickly
    Slants slants_;              ///< as drawn
    std::vector<Hiders> hiders_; ///< as drawn, one a corner
    std::vector<Watched> flocks_;
};

} // namespace glim
