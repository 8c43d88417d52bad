#pragma once

#include "geometry/placement.h"
#include "judgement/build_factors.h"
#include "model/study.h"
#include "visibility/prepared_scene.h"

#include <array>
#include <span>

namespace glim {

/// How far off each tolerance's ways are at most: figures of 0 or more, one list a tolerance.
using Extents = std::vector<std::array<double, tolerance_way_count>>;

/// Where the bodies of a build stand. A mirrored half moves as the mirror image of the drawn one.
struct BuildPlaces {
    Slots<SurfaceId, Placement> at;     ///< vehicle frame from where each surface was drawn
    Slots<SurfaceId, Length> offset_by; ///< along each surface's normals, outward +
    Extents extents;
};

/// Turns deviations into places, tolerance upon tolerance.
class BuildMoves {
public:
    /// `study` outlives it.
    BuildMoves(const Study& study, std::vector<BuildFactor> factors);

    const std::vector<BuildFactor>& factors() const { return factors_; }
    /// `deviations`: one a factor, mm or degrees.
    BuildPlaces places(std::span<const double> deviations) const;

    /// The tolerances that move a surface as it is, in the order in which they do. Bodies of one
    /// list and one side never move against each other.
    const std::vector<std::size_t>& movers(SurfaceId surface) const { return movers_[surface]; }
    bool has_profile(SurfaceId surface) const;

    /// What no build exceeds; each tolerance's multiplied by its `scale`.
    Extents widest(std::span<const double> scale) const;
    /// What one build has.
    Extents extents_of(std::span<const double> deviations) const;

    /// The offset of a surface is within this to either side.
    Length widest_offset(SurfaceId surface, const Extents& extents) const;
    /// So far at most `body` moves against `lit`, as an eye in any fixed direction sees it.
    Length reach(const Standing& body, const Standing& lit, const Extents& extents) const;
    /// So much at most a surface turns.
    Angle widest_turn(SurfaceId surface, const Extents& extents) const;

private:
    /// The axes by which a tolerance's ways go.
    struct Axes {
        Vector forward, outboard, up;
        Direction turn = Direction::z(), tilt = Direction::y(), roll = Direction::x();
        Point about = Point::Zero();
    };
    Axes axes_of(const Tolerance& tolerance) const;
    Placement placement(std::size_t tolerance,
                        const std::array<double, tolerance_way_count>& by) const;
    Length widest_move(std::size_t tolerance, SurfaceId surface, const Extents& extents) const;

    const Study& study_;
    std::vector<BuildFactor> factors_;
    std::vector<Axes> axes_;                             ///< one a tolerance
    Slots<SurfaceId, std::vector<std::size_t>> movers_;  ///< rigidly
    Slots<SurfaceId, std::vector<std::size_t>> offsets_; ///< by their profile
    Slots<SurfaceId, Box> boxes_;
};

} // namespace glim
