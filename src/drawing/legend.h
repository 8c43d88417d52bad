#pragma once

#include "drawing/canvas.h"

namespace glim {

/// A sample and what it stands for.
struct LegendEntry {
    std::function<void(Canvas&, const Rect& sample)> draw;
    std::string words;
};

/// Entries side by side, in as many lines as the width needs; words that are too long break.
class Legend {
public:
    Legend(std::vector<LegendEntry> entries, double width);

    double height() const { return height_; }
    void draw(Canvas& canvas, const Point2& at) const;

private:
    struct Placed {
        LegendEntry entry;
        Rect rect;
    };
    std::vector<Placed> placed_;
    double height_ = 0;
};

/// How small text on charts may be set, and is.
inline constexpr double chart_text_size = 8;

} // namespace glim
