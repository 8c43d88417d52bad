#pragma once

#include "remedy/sight_sheaf.h"

namespace glim {

/// A cell of the plan with heights that hold the set between them, straight between its corners.
struct CellSpan {
    std::array<double, 3> bottom = {}, top = {}; ///< mm, over its three corners
    bool any = false;                            ///< else the set is nowhere over the cell
};

/// The space that has to stay empty for one lamp: what several sheaves take together, cut off below
/// and above. Level frame, see SightSheaf.
class KeepClearSet {
public:
    /// Between two levels.
    KeepClearSet(std::vector<SightSheaf> sheaves, const HeightSpan& levels);

    /// Whether a point belongs to it, by the definition; the border does.
    bool holds(const Point& p) const;
    /// Whether it may reach into the hull of these places: see SightSheaf::may_meet.
    bool may_meet(std::span<const Point> corners) const;
    /// Whether a point of it was found near `p`: see SightSheaf::is_near.
    bool is_near(const Point& p, double within) const;
    /// From its lowest to its highest point over a place; nothing where it has none there.
    std::optional<HeightSpan> column(const Point2& place) const;
    /// The same over a whole triangle of the plan: see SightSheaf::raise.
    CellSpan over(const PlaneTriangle& cell) const;
    /// The widest stretch of the vertical over a place that it leaves free between its lowest and
    /// its highest point.
    Length widest_gap(const Point2& place) const;
    /// The outlines of the places that it covers within `within`, counter-clockwise: see
    /// united_outlines for `grown`.
    std::vector<std::vector<Point2>> plan(const ConvexPolygon& within, Length grown) const;

    const std::vector<SightSheaf>& sheaves() const { return sheaves_; }

private:
    std::vector<SightSheaf> sheaves_;
    double lowest_, highest_;
};

} // namespace glim
