#pragma once

#include "generator/lift.h"
#include "generator/skin.h"

namespace glim::demo {

enum class Along { u, v };

/// A line of the chart where two panels meet. The panel draws back from it to the side given, +1 or
/// -1 in the other parameter, by half the gap and its own rounding.
struct ShutLine {
    Along along;
    double at;     ///< value of the other parameter
    Point2 extent; ///< from, to; closed
    double side;
};

inline constexpr double shut_gap = 3.6; ///< mm between the walls of two panels
inline constexpr Hem shut_hem{3, 12};

/// The chart lifted onto the skin, drawn back from shut lines, with its hems. `hem` is asked with
/// the places before drawing back, and never about an edge that lies within the panel.
TriangleMesh panel(const Skin& skin, const ChartMesh& chart, const std::vector<ShutLine>& lines,
                   const std::function<std::optional<Hem>(const Point2& middle)>& hem);

} // namespace glim::demo
