#pragma once

#include "remedy/reach_from.h"
#include "remedy/sight_sheaf.h"

#include <algorithm>
#include <limits>

namespace glim {

/// Rounding of unit vectors; a facet turned away by less shows nothing.
inline constexpr double facing_grain = 1e-12;

/// How far an end of a span that is concave over the plan may rise above its straight course
/// between a cell's corners: for a curvature of `bend` over a triangle of that size.
inline double arch(double slope, double size, double nearest)
{
    const double by_curvature =
        nearest > 0 ? size * size / (6 * nearest) : std::numeric_limits<double>::infinity();
    return slope * std::min(size, by_curvature);
}

/// A cell of the plan, and which end of the set is asked for over it: prepared for many facets.
struct SightSheaf::Ask {
    std::span<const Point2> cell;
    HeightRule far;  ///< of the end that is asked for
    HeightRule near; ///< of the other end, turned upside down
    std::array<double, 3> bounds = {};
    Point2 middle = Point2::Zero();
    double radius = 0, size = 0;

    Ask(std::span<const Point2> corners, Sense sense, const SightSheaf& sheaf) : cell(corners)
    {
        const HeightRule top{1, sheaf.up_slope_};
        const HeightRule bottom{-1, -sheaf.down_slope_};
        far = sense == Sense::up ? top : bottom;
        near = sense == Sense::up ? bottom : top;
        for (std::size_t i = 0; i < bounds.size(); ++i) {
            bounds[i] = -std::numeric_limits<double>::infinity();
            for (const Point2& p : cell)
                bounds[i] = std::max(bounds[i], sheaf.inward_[i].dot(p));
        }
        for (const Point2& p : cell)
            middle += p / static_cast<double>(cell.size());
        for (std::size_t i = 0; i < cell.size(); ++i) {
            radius = std::max(radius, (cell[i] - middle).norm());
            size = std::max(size, (cell[i] - cell[(i + 1) % cell.size()]).norm());
        }
        if (cell.size() > 3) // diagonals count as well
            size = 2 * radius;
    }

    bool misses(const Point& least, const Point& most, const SightSheaf& sheaf) const
    {
        for (std::size_t i = 0; i < bounds.size(); ++i) {
            const Point2& m = sheaf.inward_[i];
            const double nearest = m.x() * (m.x() > 0 ? least.x() : most.x()) +
                                   m.y() * (m.y() > 0 ? least.y() : most.y());
            if (nearest > bounds[i])
                return true;
        }
        return false;
    }

    double cone(const Point& x, const Point2& place) const
    {
        return far.sign * x.z() + far.slope * (place - x.head<2>()).norm();
    }

    bool may_see(const Point2& x, const SightSheaf& sheaf) const
    {
        return sheaf.inward_[0].dot(x) <= bounds[0] && sheaf.inward_[1].dot(x) <= bounds[1] &&
               sheaf.inward_[2].dot(x) <= bounds[2];
    }

    FacetPiece piece_of(const LitFacet& facet, const SightSheaf& sheaf) const
    {
        FacetPiece piece;
        for (const Point& x : facet.corners)
            piece.add(x);
        for (std::size_t i = 0; i < bounds.size() && !piece.empty(); ++i)
            piece = piece.within(sheaf.inward_[i], bounds[i]);
        return piece;
    }

    /// What a concave end may rise between the corners.
    double spare(const FacetPiece& piece, const HeightRule& rule) const
    {
        if (rule.slope >= 0 || cell.size() == 1)
            return 0;
        double nearest = std::numeric_limits<double>::infinity();
        double reach = 0;
        for (std::size_t i = 0; i < piece.count; ++i) {
            nearest = std::min(nearest, (piece.corners[i].head<2>() - middle).norm());
            reach = std::max(reach, (piece.corners[i] - piece.corners[0]).head<2>().norm());
        }
        return arch(-rule.slope, size, nearest - reach - radius);
    }
};

} // namespace glim
