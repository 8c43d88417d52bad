#include "drawing/label_places.h"

#include <algorithm>

namespace glim {

namespace {

bool overlap(const Rect& a, const Rect& b)
{
    return a.x < b.right() && b.x < a.right() && a.y < b.bottom() && b.y < a.bottom();
}

} // namespace

std::optional<Point2> LabelPlaces::first_free(std::span<const Point2> places, const Extent& size)
{
    for (const Point2& at : places)
        if (const Rect rect{at.x(), at.y(), size.width, size.height}; is_free(rect)) {
            take(rect);
            return at;
        }
    return std::nullopt;
}

bool LabelPlaces::is_free(const Rect& rect) const
{
    const bool inside = rect.x >= frame_.x && rect.y >= frame_.y &&
                        rect.right() <= frame_.right() && rect.bottom() <= frame_.bottom();
    return inside && std::none_of(taken_.begin(), taken_.end(),
                                  [&](const Rect& r) { return overlap(r, rect); });
}

std::vector<Point2> places_around(const Point2& mark, const Extent& size, double gap)
{
    const double left = mark.x() - gap - size.width, right = mark.x() + gap;
    const double above = mark.y() - gap - size.height, below = mark.y() + gap;
    const double middle_x = mark.x() - size.width / 2, middle_y = mark.y() - size.height / 2;
    return {{right, middle_y}, {left, middle_y}, {right, above},    {left, above},
            {right, below},    {left, below},    {middle_x, above}, {middle_x, below}};
}

} // namespace glim
