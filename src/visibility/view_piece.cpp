#include "visibility/view_piece.h"

#include <algorithm>
#include <cassert>
#include <limits>

namespace glim {

namespace {

struct Range {
    double least = std::numeric_limits<double>::infinity();
    double most = -std::numeric_limits<double>::infinity();
};

Range range_of(std::span<const Point2> polygon, const Point2& axis)
{
    Range range;
    for (const Point2& p : polygon) {
        const double along = axis.dot(p);
        range.least = std::min(range.least, along);
        range.most = std::max(range.most, along);
    }
    return range;
}

/// Whether a line along one of `edges_of`'s edges keeps the two apart by `margin`.
bool parted(std::span<const Point2> edges_of, std::span<const Point2> other, double margin)
{
    for (std::size_t i = 0; i < edges_of.size(); ++i) {
        const Point2 along = edges_of[(i + 1) % edges_of.size()] - edges_of[i];
        const Point2 axis(along.y(), -along.x());
        const Range here = range_of(edges_of, axis);
        const Range there = range_of(other, axis);
        const double gap = std::max(there.least - here.most, here.least - there.most);
        if (gap > margin * axis.norm())
            return true;
    }
    return false;
}

} // namespace

void ViewPiece::add(const Point2& at, double height)
{
    assert(count_ < at_.size());
    at_[count_] = at;
    height_[count_] = height;
    ++count_;
}

ViewPiece ViewPiece::cut(double height, double sign) const
{
    ViewPiece kept;
    for (std::size_t i = 0; i < count_; ++i) {
        const std::size_t next = (i + 1) % count_;
        const double here = sign * (height_[i] - height);
        const double there = sign * (height_[next] - height);
        if (here >= 0)
            kept.add(at_[i], height_[i]);
        if ((here < 0) != (there < 0)) {
            const double along = here / (here - there);
            kept.add(at_[i] + along * (at_[next] - at_[i]), height);
        }
    }
    return kept;
}

bool come_near(std::span<const Point2> a, std::span<const Point2> b, double margin)
{
    return !a.empty() && !b.empty() && !parted(a, b, margin) && !parted(b, a, margin);
}

} // namespace glim
