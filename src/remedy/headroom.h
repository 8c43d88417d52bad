#pragma once

#include "remedy/keep_clear.h"

namespace glim {

/// What a surface has left to one keep-clear space.
struct SpaceHeadroom {
    std::size_t space = 0;          ///< place in KeepClear::spaces
    std::optional<Length> least;    ///< see Headroom
    Point tightest = Point::Zero(); ///< where that is, vehicle frame; where there is a least
};

/// Areas are told of what has less headroom than these.
inline constexpr std::array headroom_levels = {millimetres(0), millimetres(1),  millimetres(2),
                                               millimetres(5), millimetres(10), millimetres(20)};

/// The headroom of a surface: how far each of its places may come out along its normal before it
/// meets a keep-clear space that the surface counts for. Below zero where a place lies inside: as
/// deep as intrusions have it.
struct Headroom {
    Standing surface;
    /// The least of all places, to way_grain; none where all have `farthest_way_in` or more.
    std::optional<Length> least;
    Point tightest = Point::Zero(); ///< where that is, vehicle frame
    Vector way = Vector::Zero();    ///< the normal there
    std::size_t space = 0;          ///< the space that is nearest there: in KeepClear::spaces
    std::vector<SpaceHeadroom> by_space;
    /// How much of the surface has less than each of headroom_levels.
    std::array<Area, headroom_levels.size()> within = {};
    /// The surface, divided where it matters, with the headroom at each point: `farthest_way_in`
    /// stands for that and more. Vehicle frame, mm.
    TriangleMesh mesh;
    std::vector<Length> figures;
};

/// Places are looked at so close to each other where they have less than `headroom_near`, and so
/// close elsewhere.
inline constexpr Length headroom_grain = intrusion_grain;
inline constexpr Length headroom_near = millimetres(20);
inline constexpr Length headroom_far_grain = millimetres(12);
/// Between the places looked at nothing has less than a surface's least (of one without, less than
/// `headroom_near`) by more than this, or half a percent of it, unless on facets smaller than
/// `headroom_least_grain`.
inline constexpr Length headroom_between = millimetres(0.02);
inline constexpr Length headroom_least_grain = millimetres(0.5);

/// Of every surface that counts as in the way of one of the spaces, mirror images included; the
/// tightest first, those without a least last. Throws Stopped.
std::vector<Headroom> headroom_over(const Session& session, const KeepClear& found,
                                    const Workers& workers);

} // namespace glim
