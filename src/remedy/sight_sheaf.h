#pragma once

#include "geometry/field.h"
#include "geometry/polygons.h"
#include "geometry/triangle_mesh.h"

#include <optional>

namespace glim {

/// All here is in a lamp's *level frame*: x along its reference axis laid into the ground, y
/// outboard, z up, mm; right-handed on both sides of the vehicle, because facets are turned over
/// with it. Its plan is the plane of x and y.

/// From where to where along the vertical of a place in the plan; z.
struct HeightSpan {
    Length bottom, top;
};

/// A part of a lit face together with the directions in which it has to be seen: the set of all
/// x + t d for points x of it, t >= 0 and d of the rectangle with n(x).d > 0.
///
/// Over a place of the plan one facet takes one span of the vertical, whatever its shape: those of
/// its points that have the place within their H between two upright planes are a convex polygon,
/// and each of these takes [z + tan(V1) r, z + tan(V2) r] at the level distance r. For V1 <= 0 <=
/// V2 both ends are taken at corners of that polygon, exactly. What the facet turns away from is
/// cut off by its own plane.
///
/// A rectangle without width or height counts as one of `least_width`, so that it has a volume.
class SightSheaf {
public:
    static constexpr Angle least_width = degrees(0.002);
    /// Wider rectangles have to be given in pieces, higher ones have no plan.
    static constexpr Angle most_width = degrees(170);
    static constexpr Angle steepest = degrees(89);

    /// Facets that face no direction of `toward` count for nothing. Requires: at most `most_width`
    /// wide, |V| at most `steepest`.
    SightSheaf(const TriangleMesh& part, const FieldRectangle& toward);

    bool empty() const { return facets_.empty(); }
    const FieldRectangle& toward() const { return toward_; }
    /// Whether the point belongs to the set; the border does.
    bool holds(const Point& p) const;
    /// Whether it may reach into the hull of these places: never no where it does; of a single
    /// place exact (to 0.001 mm), of others the better, the smaller their hull is. Requires: at
    /// most `most_corners`.
    bool may_meet(std::span<const Point> corners) const;
    static constexpr std::size_t most_corners = 8;
    /// Whether a point of it was found no farther from `p` than `within`, mm: one of those that a
    /// corner of a facet sends along a side of the rectangle. Finds what is as thin as paper, such
    /// as what a facet seen edge-on takes, which no place beside `p` need meet.
    bool is_near(const Point& p, double within) const;
    /// The spans of its facets over a place, one a facet, in no promised order.
    void add_spans(const Point2& place, std::vector<HeightSpan>& spans) const;

    /// Heights over the corners of a cell of the plan: one corner for a place, three for a
    /// triangle.
    struct Reach {
        std::array<double, 3> most = {};
        bool any = false;
    };
    enum class Sense { up, down };
    /// Raises `reach` so that, straight between the corners, it lies nowhere in the cell below the
    /// set's upper end (`down`: of the set turned upside down). At a single corner exact, but where
    /// V1 > 0 or V2 < 0 (to 0.001 mm). What no facet reaches stays as it was.
    void raise(std::span<const Point2> cell, Sense sense, Reach& reach) const;

    /// The places of the plan that the set covers, as convex pieces cut by `within`.
    std::vector<ConvexPolygon> plan(const ConvexPolygon& within) const;

private:
    struct LitFacet {
        std::array<Point, 3> corners;
        Vector normal;
        bool cut; ///< it turns away from some directions of the rectangle
    };
    struct Node {
        Point least, most;
        std::uint32_t first, last;
        std::uint32_t second_child; ///< 0: facets first to last
    };
    struct Ask; ///< what is asked of one cell, prepared

    std::uint32_t build(std::uint32_t first, std::uint32_t last);
    void raise(const Ask& ask, std::uint32_t node, Reach& reach) const;
    void raise(const Ask& ask, const LitFacet& facet, Reach& reach) const;
    static bool may_raise(const Ask& ask, const Node& node, const Reach& reach);
    void raise_by_corners(const Ask& ask, std::uint32_t node, Reach& reach) const;
    std::array<double, 3> reach_over(const Ask& ask, const LitFacet& facet,
                                     const Reach& known) const;
    struct Raised {
        std::array<double, 3>& most;        ///< by one facet
        const std::array<double, 3>& known; ///< by all before it
    };
    void raise_by_edge(const Ask& ask, const std::array<Point, 2>& edge, std::size_t side,
                       const Raised& raised) const;
    static void raise_by_face(const Ask& ask, const LitFacet& facet, const Raised& raised);
    bool holds(const Ask& ask, std::uint32_t node, const Point& p) const;
    struct Hull; ///< places asked of together, prepared
    bool misses(const Hull& hull, const Node& node) const;
    bool may_meet(const Hull& hull, std::uint32_t node) const;
    bool may_meet(const Hull& hull, const LitFacet& facet) const;
    bool is_near(const Hull& around, std::uint32_t node, const Point& p, double within) const;
    bool is_near(const LitFacet& facet, const Point& p, double within) const;
    std::optional<HeightSpan> span(const Ask& ask, const LitFacet& facet) const;
    double most_facing(const Vector& normal) const;
    std::optional<std::array<Angle, 2>> azimuths(const LitFacet& facet) const;

    FieldRectangle toward_;
    std::array<Point2, 2> ways_;   ///< level, at the least H and at the most
    std::array<Point2, 3> inward_; ///< a level way w lies between the H where all are >= 0
    double down_slope_, up_slope_; ///< tan V1, tan V2
    std::vector<LitFacet> facets_; ///< in the order of the tree
    std::vector<Node> nodes_;
};

} // namespace glim
