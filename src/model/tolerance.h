#pragma once

#include "model/lamp.h"

namespace glim {

/// Ways in which a body may stand otherwise than it was drawn. The senses are those of the side of
/// the vehicle on which what moves stands; on the median plane itself those of the left side.
enum class ToleranceWay {
    forward,  ///< mm, along the vehicle's forward axis
    outboard, ///< mm, away from the median plane
    up,       ///< mm
    turn,     ///< degrees about the vertical; + takes what lies forward outboard
    tilt,     ///< degrees about the horizontal across the vehicle; + takes what lies forward up
    roll,     ///< degrees about the forward axis; + takes what lies outboard up
    profile,  ///< mm, every point of a surface along its normal, outward +
};
inline constexpr std::size_t tolerance_way_count = 7;

constexpr bool turns(ToleranceWay way)
{
    return way == ToleranceWay::turn || way == ToleranceWay::tilt || way == ToleranceWay::roll;
}

struct ToleranceWayWord {
    ToleranceWay way;
    std::string_view key;
    std::string_view unit; ///< "mm" or "deg"
};
inline constexpr std::array tolerance_way_words = {
    ToleranceWayWord{ToleranceWay::forward, "forward", "mm"},
    ToleranceWayWord{ToleranceWay::outboard, "outboard", "mm"},
    ToleranceWayWord{ToleranceWay::up, "up", "mm"},
    ToleranceWayWord{ToleranceWay::turn, "turn", "deg"},
    ToleranceWayWord{ToleranceWay::tilt, "tilt", "deg"},
    ToleranceWayWord{ToleranceWay::roll, "roll", "deg"},
    ToleranceWayWord{ToleranceWay::profile, "profile", "mm"},
};
static_assert(tolerance_way_words.size() == tolerance_way_count);

/// Who answers for it: whoever makes the part, or whoever fits it.
enum class ToleranceOrigin { part, installation };
struct ToleranceOriginWord {
    ToleranceOrigin origin;
    std::string_view key;
};
inline constexpr std::array tolerance_origin_words = {
    ToleranceOriginWord{ToleranceOrigin::part, "part"},
    ToleranceOriginWord{ToleranceOrigin::installation, "installation"},
};

/// How builds spread about the drawn place, always evenly to both sides. What a figure t says of
/// them stands beside each.
enum class Spread {
    normal,     ///< t is one standard deviation
    uniform,    ///< anywhere within +-t alike
    triangular, ///< within +-t, falling off evenly from the middle
    limits,     ///< normal, with +-t at so many standard deviations (`sigmas`)
};
struct SpreadWord {
    Spread spread;
    std::string_view key;
};
inline constexpr std::array spread_words = {
    SpreadWord{Spread::normal, "normal"},
    SpreadWord{Spread::uniform, "uniform"},
    SpreadWord{Spread::triangular, "triangular"},
    SpreadWord{Spread::limits, "limits"},
};

/// One tolerance and all that goes with it: [[tolerance]] of a study. Each way with a figure above
/// 0 varies by itself.
struct Tolerance {
    std::string name; ///< unique among tolerances
    ToleranceOrigin origin = ToleranceOrigin::part;
    Spread spread = Spread::limits;
    double sigmas = 3; ///< of `limits`
    /// One a way, in the order of ToleranceWay; mm or degrees; 0: does not vary.
    std::array<double, tolerance_way_count> by = {};
    std::optional<Point> about;      ///< given where something turns; vehicle frame
    std::string module;              ///< whose name it has; empty: surfaces or lamps themselves
    std::vector<SurfaceId> surfaces; ///< all that move, those of lamps and modules included
    std::vector<LampId> lamps;       ///< likewise
    /// How many modules what moves is nested in, counted from the inside: 0 for a tolerance of
    /// surfaces or lamps themselves. Moves of a lower level come first, in the frame of the higher.
    int level = 0;

    double operator[](ToleranceWay way) const { return by[static_cast<std::size_t>(way)]; }
};

/// What `cornerglim tolerances` is to find out: [tolerances] of a study.
struct ToleranceTask {
    std::vector<std::size_t> checks; ///< places in Study::checks; empty: all
    std::size_t builds = 4096;       ///< for the shares
    std::size_t directions = 21;     ///< so many deciding ones a look; 0: the whole field
    Angle step = degrees(5);         ///< of the field among which they are chosen
    std::uint64_t seed = 1;
    std::optional<std::size_t> asked; ///< place in Variation::tolerances: how much may it be?
    double share = 0.997;             ///< of builds that are to meet every check, for `asked`
};

} // namespace glim
