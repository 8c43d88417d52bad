#include "remedy/sight_ask.h"

#include <cmath>

namespace glim {

// How far a sheaf reaches over a cell of its plan: SightSheaf::raise.

namespace {

constexpr double endless = std::numeric_limits<double>::infinity();

/// Whether no edge of either triangle has the whole other beyond it; either may be a line.
bool may_overlap(std::span<const Point2> a, std::span<const Point2> b)
{
    const auto parted_by = [](std::span<const Point2> one, std::span<const Point2> other) {
        for (std::size_t i = 0; i < 3; ++i) {
            const Point2 along = one[(i + 1) % 3] - one[i];
            const double inside = cross(along, one[(i + 2) % 3] - one[i]);
            if (inside != 0 && std::all_of(other.begin(), other.end(), [&](const Point2& p) {
                    return cross(along, p - one[i]) * inside < 0;
                }))
                return true;
        }
        return false;
    };
    return !parted_by(a, b) && !parted_by(b, a);
}

/// Shares of the way along an edge; none where first > last.
struct EdgePart {
    double first, last;
};

/// What of the part has at + share * rate <= bound.
EdgePart part_below(EdgePart part, double at, double rate, double bound)
{
    if (rate > 0)
        part.last = std::min(part.last, (bound - at) / rate);
    else if (rate < 0)
        part.first = std::max(part.first, (bound - at) / rate);
    else if (at > bound)
        return {1, 0};
    return part;
}

} // namespace

void SightSheaf::raise(std::span<const Point2> cell, Sense sense, Reach& reach) const
{
    if (nodes_.empty())
        return;
    const Ask ask(cell, sense, *this);
    if (cell.size() == 3 && ask.far.slope >= 0)
        raise_by_corners(ask, 0, reach);
    raise(ask, 0, reach);
}

bool SightSheaf::may_raise(const Ask& ask, const Node& node, const Reach& reach)
{
    const double top = ask.far.sign > 0 ? node.most.z() : -node.least.z();
    bool may_raise = !reach.any;
    for (std::size_t j = 0; j < ask.cell.size() && !may_raise; ++j) {
        const Point2& p = ask.cell[j];
        const Point2 across =
            (p - node.least.head<2>()).cwiseAbs().cwiseMax((p - node.most.head<2>()).cwiseAbs());
        const double rise =
            ask.far.slope >= 0 ? ask.far.slope * across.norm() : arch(-ask.far.slope, ask.size, 0);
        may_raise = top + (ask.far.slope >= 0 || ask.cell.size() > 1 ? rise : 0) > reach.most[j];
    }
    return may_raise;
}

/// First by what is surely reached, so that bounds of the rest are chosen well.
void SightSheaf::raise_by_corners(const Ask& ask, std::uint32_t place, Reach& reach) const
{
    const Node& node = nodes_[place];
    if (ask.misses(node.least, node.most, *this) || !may_raise(ask, node, reach))
        return;
    if (node.second_child != 0) {
        raise_by_corners(ask, place + 1, reach);
        raise_by_corners(ask, node.second_child, reach);
        return;
    }
    for (std::uint32_t f = node.first; f < node.last; ++f)
        for (const Point& x : facets_[f].corners) {
            if (facets_[f].cut || !ask.may_see(x.head<2>(), *this))
                continue;
            for (std::size_t j = 0; j < 3; ++j) {
                const double height = ask.cone(x, ask.cell[j]);
                reach.most[j] = reach.any ? std::max(reach.most[j], height) : height;
            }
            reach.any = true;
        }
}

void SightSheaf::raise(const Ask& ask, std::uint32_t place, Reach& reach) const
{
    const Node& node = nodes_[place];
    if (ask.misses(node.least, node.most, *this) || !may_raise(ask, node, reach))
        return;
    if (node.second_child == 0) {
        for (std::uint32_t f = node.first; f < node.last; ++f)
            raise(ask, facets_[f], reach);
        return;
    }
    // The one that stands higher first: it often spares the other.
    const Node& one = nodes_[place + 1];
    const Node& other = nodes_[node.second_child];
    const bool other_first =
        ask.far.sign > 0 ? other.most.z() > one.most.z() : other.least.z() < one.least.z();
    raise(ask, other_first ? node.second_child : place + 1, reach);
    raise(ask, other_first ? place + 1 : node.second_child, reach);
}

/// The farthest point of a facet is a corner of what a place sees of it: one of its own, whose
/// height is a cone over the plan and so lies below straight lines; or where an edge leaves the
/// place's H, whose height is a plane over it; or, where the place is over the facet, the facet
/// itself. Each that some place of the cell sees counts.
std::array<double, 3> SightSheaf::reach_over(const Ask& ask, const LitFacet& facet,
                                             const Reach& known) const
{
    std::array<double, 3> most;
    most.fill(-endless);
    for (const Point& x : facet.corners)
        if (ask.may_see(x.head<2>(), *this))
            for (std::size_t j = 0; j < 3; ++j)
                most[j] = std::max(most[j], ask.cone(x, ask.cell[j]));
    for (std::size_t e = 0; e < 3; ++e)
        for (std::size_t side = 0; side < 2; ++side)
            raise_by_edge(ask, {facet.corners[e], facet.corners[(e + 1) % 3]}, side,
                          {most, known.any ? known.most : most});
    raise_by_face(ask, facet, {most, known.any ? known.most : most});
    return most;
}

void SightSheaf::raise_by_face(const Ask& ask, const LitFacet& facet, const Raised& raised)
{
    PlaneTriangle seen;
    double highest = -endless;
    for (std::size_t i = 0; i < 3; ++i) {
        seen[i] = facet.corners[i].head<2>();
        highest = std::max(highest, ask.far.sign * facet.corners[i].z());
    }
    if (std::abs(facet.normal.z()) < facing_grain || !may_overlap(seen, ask.cell))
        return;
    std::array<double, 3> plane = {};
    double plane_adds = 0, level_adds = 0;
    for (std::size_t j = 0; j < 3; ++j) {
        plane[j] = ask.far.sign *
                   (facet.corners[0].z() -
                    facet.normal.head<2>().dot(Point2(ask.cell[j] - seen[0])) / facet.normal.z());
        const double known = std::max(raised.most[j], raised.known[j]);
        plane_adds += std::max(0.0, plane[j] - known);
        level_adds += std::max(0.0, highest - known);
    }
    for (std::size_t j = 0; j < 3; ++j)
        raised.most[j] = std::max(raised.most[j], plane_adds < level_adds ? plane[j] : highest);
}

void SightSheaf::raise_by_edge(const Ask& ask, const std::array<Point, 2>& edge, std::size_t side,
                               const Raised& raised) const
{
    auto& [most, known] = raised;
    const Point2& across = inward_[side];
    const Point2& way = ways_[side];
    const Vector along = edge[1] - edge[0];
    const double rate = across.dot(along.head<2>());
    if (rate == 0)
        return;
    std::array<double, 3> shares = {};
    double most_distance = -endless;
    for (std::size_t j = 0; j < 3; ++j) {
        shares[j] = across.dot(Point2(ask.cell[j] - edge[0].head<2>())) / rate;
        const Point2 x = (edge[0] + shares[j] * along).head<2>();
        most_distance = std::max(most_distance, way.dot(Point2(ask.cell[j] - x)));
    }
    const auto [least, greatest] = std::minmax_element(shares.begin(), shares.end());
    // An edge along which the cell looks has a far end that no place of it sees.
    const Point2& middle = inward_[2];
    const EdgePart part =
        part_below({std::max(0.0, *least), std::min(1.0, *greatest)}, middle.dot(edge[0].head<2>()),
                   middle.dot(along.head<2>()), ask.bounds[2]);
    if (part.first > part.last || most_distance < 0)
        return;
    // Two bounds of one corner: its own plane, drawn out over the cell, and the cones of the ends
    // between which it slides. The one that adds less to what is known already counts.
    const Point first = edge[0] + part.first * along;
    const Point last = edge[0] + part.last * along;
    std::array<double, 3> plane = {}, cones = {};
    double plane_adds = 0, cones_add = 0;
    for (std::size_t j = 0; j < 3; ++j) {
        const Point x = edge[0] + shares[j] * along;
        plane[j] =
            ask.far.sign * x.z() + ask.far.slope * way.dot(Point2(ask.cell[j] - x.head<2>()));
        cones[j] = std::max(ask.cone(first, ask.cell[j]), ask.cone(last, ask.cell[j]));
        plane_adds += std::max(0.0, plane[j] - std::max(most[j], known[j]));
        cones_add += std::max(0.0, cones[j] - std::max(most[j], known[j]));
    }
    const std::array<double, 3>& best = plane_adds < cones_add ? plane : cones;
    for (std::size_t j = 0; j < 3; ++j)
        most[j] = std::max(most[j], best[j]);
}

/// A facet that turns away from some directions ends at its own plane: it starts there or stops
/// there, and over a whole cell the plane serves as a bound where it is the lower one.
void SightSheaf::raise(const Ask& ask, const LitFacet& facet, Reach& reach) const
{
    const FacetPiece piece = ask.piece_of(facet, *this);
    if (piece.empty())
        return;
    std::array<double, 3> own = ask.cell.size() == 3 && ask.far.slope >= 0
                                    ? reach_over(ask, facet, reach)
                                    : std::array<double, 3>{};
    if (ask.cell.size() == 1 || ask.far.slope < 0) {
        const double spare = ask.spare(piece, ask.far);
        for (std::size_t j = 0; j < ask.cell.size(); ++j)
            own[j] = reach_from(piece, ask.far, ask.cell[j]) + spare;
    }
    if (facet.cut) {
        const double lean = ask.far.sign * facet.normal.z();
        std::array<double, 3> plane = {};
        bool reaches = false;
        double own_sum = 0, plane_sum = 0;
        for (std::size_t j = 0; j < ask.cell.size(); ++j) {
            const double before =
                facet.normal.head<2>().dot(Point2(ask.cell[j] - facet.corners[0].head<2>()));
            plane[j] = ask.far.sign * facet.corners[0].z() - before / lean;
            if (std::abs(lean) < facing_grain)
                reaches = reaches || before >= 0;
            else if (lean > 0)
                reaches = reaches || plane[j] <= own[j];
            else
                reaches = reaches || plane[j] >= -(reach_from(piece, ask.near, ask.cell[j]) +
                                                   ask.spare(piece, ask.near));
            own_sum += own[j];
            plane_sum += plane[j];
        }
        if (!reaches)
            return;
        if (lean < -facing_grain && plane_sum < own_sum)
            own = plane;
    }
    for (std::size_t j = 0; j < ask.cell.size(); ++j)
        reach.most[j] = reach.any ? std::max(reach.most[j], own[j]) : own[j];
    reach.any = true;
}

} // namespace glim
