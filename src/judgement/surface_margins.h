#pragma once

#include "judgement/session.h"

#include <array>
#include <string_view>

namespace glim {

// How far a surface can move before the outcome of a check changes: what studio, part maker and
// vehicle maker argue over.

/// Ways to move a surface. The first three move it as it is; a twin moves as its mirror image.
enum class MarginWay {
    forward,  ///< along the vehicle
    outboard, ///< away from the median plane
    up,
    normal ///< every facet along its outer normal (see normal_offsets)
};
struct MarginWayWord {
    MarginWay way;
    std::string_view word;
};
inline constexpr std::array margin_way_words = {
    MarginWayWord{MarginWay::forward, "forward"}, MarginWayWord{MarginWay::outboard, "outboard"},
    MarginWayWord{MarginWay::up, "up"}, MarginWayWord{MarginWay::normal, "normal"}};

/// Moves are known to this: the outcome changes within it.
inline constexpr Length margin_accuracy = millimetres(0.05);

/// One surface, one way, one check.
struct SurfaceMargin {
    SurfaceId surface;
    MarginWay way = MarginWay::forward;
    /// The first move along the way, and the first against it, at which the check is not met any
    /// more; or, where it is not met as drawn, at which it is. The outcome changes at this move or
    /// less than margin_accuracy before. None where it does not change within reach.
    std::optional<Length> along, against;
    /// What the deciding margin gains by a mm along the way, mm2 a mm; about where it is drawn.
    double gain_mm = 0;
};

struct CheckMargins {
    std::size_t check = 0;              ///< place in Study::checks
    bool met = false;                   ///< as drawn, meshes taken as exact
    Area margin;                        ///< LampVerdict::margin of what decides, likewise
    std::vector<SurfaceMargin> margins; ///< surfaces in the study's order, ways in theirs
    /// Why the check is left out: no margin in mm can be told for it. Empty where one can.
    std::string left_out;
};

struct MarginsWanted {
    std::vector<std::size_t> checks; ///< places in Study::checks
    Angle step = degrees(5);         ///< between directions looked at; corners of fields always are
    Length reach = millimetres(20);  ///< no surface is moved further
};

struct MarginFindings {
    MarginsWanted wanted;
    std::vector<CheckMargins> checks;
    std::vector<SurfaceId> idle; ///< surfaces whose moves within reach change no margin at all
};

/// Moves every surface that blocks, one by one, and looks at the checks each time: areas on which a
/// verdict hangs are exact. Meshes count as exact, nothing is looked at between the directions.
///
/// Where to look is found on samples and a grid of 15 degrees, outward from where the surface is
/// drawn at a 16th, an 8th, a quarter, half and all of the reach, and between the first two that
/// differ by halving; there the outcome is then settled as promised. A move that spoils a check and
/// mends it again within one of these steps may be passed over, and so may one that only directions
/// between those of the coarse grid see.
///
/// Throws Stopped.
MarginFindings surface_margins(const Study& study, const MarginsWanted& wanted,
                               const Workers& workers);

} // namespace glim
