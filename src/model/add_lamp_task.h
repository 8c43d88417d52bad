#pragma once

#include "model/lamp.h"

namespace glim {

/// What the user prefers among places for a further lamp that serve equally.
enum class PlaceRank {
    least_area,     ///< the smallest lens
    near_lamp,      ///< the shortest way along the surface to the lamp that it helps
    far_from_nose,  ///< farthest behind the foremost point of the vehicle
    least_in_sight, ///< shows the least of its lens, on the mean over level directions all around
};
struct PlaceRankWord {
    PlaceRank rank;
    std::string_view key;
    std::string_view words; ///< for people
};
inline constexpr std::array place_rank_words = {
    PlaceRankWord{PlaceRank::least_area, "least-area", "least lens area first"},
    PlaceRankWord{PlaceRank::near_lamp, "near-lamp", "nearest to the lamp first"},
    PlaceRankWord{PlaceRank::far_from_nose, "far-from-nose", "farthest behind the nose first"},
    PlaceRankWord{PlaceRank::least_in_sight, "least-visible-change", "least in sight first"},
};

/// A search for places where a further lamp would make checks be met: [add_lamp] of a study.
struct AddLampTask {
    /// That may carry it; empty: every surface that stands in the way, within `boxes`.
    std::vector<SurfaceId> carriers;
    std::vector<Box> boxes;                ///< vehicle frame; where given, only what lies in one
    std::optional<LampId> lamp;            ///< that it helps; else the first that the checks ask
    std::optional<LampFunction> signal;    ///< its function; else that of the lamp it helps
    std::vector<std::size_t> checks;       ///< places in Study::checks; empty: all
    std::optional<double> width_to_height; ///< of its lens; none: round
    Length largest = millimetres(200);     ///< of its lens, across
    PlaceRank rank = PlaceRank::least_area;
    int places = 3; ///< how many distinct places to work out
};

} // namespace glim
