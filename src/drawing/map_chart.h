#pragma once

#include "drawing/chart_subject.h"
#include "drawing/colour_bar.h"
#include "drawing/map_paint.h"

namespace glim {

/// What the directions of a map are painted with, and what explains it.
struct MapColours {
    Painter painter;
    std::optional<ColourBar> bar = {};
    std::vector<LegendEntry> entries = {}; ///< before those of every map
    /// What else is drawn on the painted directions, below the lines of every map.
    std::function<void(Canvas&, const MapFrame&)> on_top = {};
    /// Words within the map, above all its lines.
    std::function<void(Canvas&, const MapFrame&)> letters = {};
    std::string threshold_label = {}; ///< on the line itself; empty: none
    std::string worst_label = {};     ///< beside the mark; empty: none
    bool marks_outcome = true;        ///< hatches what is not met
};

/// As wide as a page's text.
inline constexpr double chart_width = 500;
/// Left of the colour bar; the axes' labels included.
inline constexpr Rect map_room{0, 0, chart_width - colour_bar_width, 235};

/// A map with its bar to the right and its legend below.
Drawing map_chart(std::shared_ptr<const ChartSubject> subject, const MapFrame& frame,
                  const MapColours& colours);

} // namespace glim
