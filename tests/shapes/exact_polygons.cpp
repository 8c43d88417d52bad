#include "shapes/exact_polygons.h"

#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Polygon_2.h>
#include <CGAL/Polygon_set_2.h>

#include <algorithm>
#include <vector>

namespace glim::shapes {

namespace {

using Kernel = CGAL::Exact_predicates_exact_constructions_kernel;
using ExactPoint = Kernel::Point_2;
using ExactNumber = Kernel::FT;
using Polygon = CGAL::Polygon_2<Kernel>;
using PolygonSet = CGAL::Polygon_set_2<Kernel>;

ExactPoint exact(const Point2& p) { return {p.x(), p.y()}; }

/// Counter-clockwise and without repeated corners, as polygon sets ask; empty without area.
Polygon tidy(const std::vector<ExactPoint>& corners)
{
    Polygon polygon;
    for (const ExactPoint& p : corners)
        if (polygon.is_empty() || polygon[polygon.size() - 1] != p)
            polygon.push_back(p);
    while (polygon.size() > 1 && polygon[0] == polygon[polygon.size() - 1])
        polygon.erase(polygon.vertices_end() - 1);
    if (polygon.size() < 3 || polygon.area() == 0)
        return {};
    if (polygon.is_clockwise_oriented())
        polygon.reverse_orientation();
    return polygon;
}

Polygon kept_part(const CutCover& cover)
{
    std::vector<ExactPoint> kept;
    for (int i = 0; i < 3; ++i) {
        const int next = (i + 1) % 3;
        const ExactPoint here = exact(cover.corners[i]);
        if (cover.side[i] > 0)
            kept.push_back(here);
        if ((cover.side[i] > 0) != (cover.side[next] > 0)) {
            const ExactNumber drop = ExactNumber(cover.side[i]) - ExactNumber(cover.side[next]);
            const ExactNumber along = ExactNumber(cover.side[i]) / drop;
            kept.push_back(here + along * (exact(cover.corners[next]) - here));
        }
    }
    return tidy(kept);
}

ExactNumber area_of(const PolygonSet& set)
{
    std::vector<PolygonSet::Polygon_with_holes_2> pieces;
    set.polygons_with_holes(std::back_inserter(pieces));
    ExactNumber sum = 0;
    for (const auto& piece : pieces) {
        sum += piece.outer_boundary().area();
        for (auto hole = piece.holes_begin(); hole != piece.holes_end(); ++hole)
            sum += hole->area(); // holes wind clockwise: negative
    }
    return sum;
}

} // namespace

Area exactly_uncovered(const std::array<Point2, 3>& triangle, std::span<const CutCover> covers)
{
    const Polygon whole = tidy({exact(triangle[0]), exact(triangle[1]), exact(triangle[2])});
    if (whole.is_empty())
        return {};
    std::vector<Polygon> pieces;
    for (const CutCover& cover : covers) {
        Polygon piece = kept_part(cover);
        if (!piece.is_empty() && CGAL::do_overlap(piece.bbox(), whole.bbox()))
            pieces.push_back(std::move(piece));
    }
    PolygonSet covered;
    covered.join(pieces.begin(), pieces.end());
    PolygonSet left(whole);
    left.difference(covered);
    return square_millimetres(CGAL::to_double(area_of(left)));
}

} // namespace glim::shapes
