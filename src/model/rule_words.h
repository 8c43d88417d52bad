#pragma once

#include "model/rule.h"

namespace glim {

// The words of requirement tables: one row each, for whoever reads and whoever writes them.

struct MeasuredWord {
    Measured measured;
    std::string_view key;   ///< in tables and results
    std::string_view words; ///< for people
};
inline constexpr std::array quantity_words = {
    MeasuredWord{Measured::overall_width, "overall_width", "overall width"},
    MeasuredWord{Measured::axis_height, "axis_height", "height of the axis of reference"},
    MeasuredWord{Measured::h_plane_height, "h_plane_height",
                 "height of the H plane (through the centre of reference)"},
    MeasuredWord{Measured::vehicle_category, "vehicle_category", "vehicle category"},
    MeasuredWord{Measured::lamp_category, "lamp_category", "lamp category"},
    MeasuredWord{Measured::optional_lamp, "optional_lamp", "optional lamp"},
};

struct ApprovedPartsWord {
    ApprovedParts parts;
    std::string_view key;
};
inline constexpr std::array approved_parts_words = {
    ApprovedPartsWord{ApprovedParts::counted, "counted"},
    ApprovedPartsWord{ApprovedParts::ignored, "ignored"},
};

struct CombineWord {
    Combine combine;
    std::string_view key;
    std::string_view words;
};
inline constexpr std::array combine_words = {
    CombineWord{Combine::all_of, "all_of", "all of"},
    CombineWord{Combine::any_of, "any_of", "any of"},
    CombineWord{Combine::choose_one, "choose_one", "the one chosen by the maker of"},
};

struct GapFromWord {
    GapFrom from;
    std::string_view key;
    std::string_view words;
};
inline constexpr std::array gap_from_words = {
    GapFromWord{GapFrom::edge, "edge", "from edge to edge"},
    GapFromWord{GapFrom::centroid, "centroid", "from the centroid to the edge"},
};

} // namespace glim
