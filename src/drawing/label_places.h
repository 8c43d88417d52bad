#pragma once

#include "drawing/canvas.h"

namespace glim {

/// Finds room for labels: inside a frame, and clear of what stands there already.
class LabelPlaces {
public:
    explicit LabelPlaces(const Rect& frame) : frame_(frame) {}

    /// What stands there is not written over.
    void take(const Rect& rect) { taken_.push_back(rect); }
    /// The first of these places that has room for a label of that size, by its top left corner;
    /// taken from then on.
    std::optional<Point2> first_free(std::span<const Point2> places, const Extent& size);

private:
    bool is_free(const Rect& rect) const;

    Rect frame_;
    std::vector<Rect> taken_;
};

/// Around a mark, so that a label begins `gap` beside, above or below it: the top left corners.
std::vector<Point2> places_around(const Point2& mark, const Extent& size, double gap);

} // namespace glim
