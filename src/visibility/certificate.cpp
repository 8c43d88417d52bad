#include "visibility/certificate.h"

#include "visibility/touch.h"
#include "visibility/view_piece.h"

#include <algorithm>

namespace glim {

namespace {

using Index = LitLattice::Index;

/// Facets of one lit surface that lie side by side for the eye share an edge there; they are told
/// from facets that lie before each other by more than rounding.
constexpr double side_by_side_mm = 1e-6;

std::uint8_t mark_of(bool approved) { return approved ? marked_by_approved : marked_by_others; }

Ball ball_about(const CellTree& tree)
{
    if (tree.empty())
        return {Point::Zero(), 0};
    return {tree.root().centre, tree.root().half.norm()};
}

SceneMesh in_scene(const PlacedMesh& obstacle, const Point& origin)
{
    SceneMesh mesh{obstacle.mesh,
                   {},
                   millimetres((obstacle.placement(origin) - origin).norm()),
                   obstacle.placement.mirrors(),
                   obstacle.approved,
                   obstacle.lit};
    mesh.points.reserve(obstacle.mesh->points.size());
    for (const Point& p : obstacle.mesh->points)
        mesh.points.push_back(obstacle.placement(p) - origin);
    return mesh;
}

/// A place as the eye has it: across, up, and third towards the eye.
struct EyeFrame {
    Vector across, up, toward;
    Vector across_size, up_size, toward_size; ///< of their components, for boxes

    explicit EyeFrame(const ViewPlane& plane)
        : across(plane.across), up(plane.up), toward(plane.toward.vector()),
          across_size(across.cwiseAbs()), up_size(up.cwiseAbs()), toward_size(toward.cwiseAbs())
    {
    }
    Point operator()(const Point& p) const { return {across.dot(p), up.dot(p), toward.dot(p)}; }
};

/// Where an obstacle's piece may throw shade: on boxes behind it, in its rectangle of the view
/// plane and, if it is a segment, along its line.
class Shade {
public:
    Shade(const EyeFrame& eye, std::span<const Point> seen, double margin)
        : eye_(eye), margin_(margin)
    {
        for (const Point& p : seen)
            window_.add(p);
        if (seen.size() == 2)
            set_line(seen[0], seen[1]);
    }

    bool meets(const CellTree::Node& node) const
    {
        return reaches(eye_.across, eye_.across_size, node, 0) &&
               reaches(eye_.up, eye_.up_size, node, 1) &&
               eye_.toward.dot(node.centre) - eye_.toward_size.dot(node.half) <=
                   window_.most.z() + margin_ &&
               std::abs(line_.dot(node.centre) - line_at_) <= line_size_.dot(node.half) + margin_;
    }

private:
    bool reaches(const Vector& axis, const Vector& size, const CellTree::Node& node, int i) const
    {
        const double centre = axis.dot(node.centre);
        const double half = size.dot(node.half) + margin_;
        return centre - half <= window_.most[i] && centre + half >= window_.least[i];
    }

    void set_line(const Point& from, const Point& to)
    {
        const Point2 along = (to - from).head<2>();
        const double length = along.norm();
        if (length == 0)
            return;
        line_ = (along.y() * eye_.across - along.x() * eye_.up) / length;
        line_at_ = (along.y() * from.x() - along.x() * from.y()) / length;
        line_size_ = line_.cwiseAbs();
    }

    const EyeFrame& eye_;
    double margin_;
    Box window_;
    Vector line_ = Vector::Zero();
    Vector line_size_ = Vector::Zero();
    double line_at_ = 0;
};

/// Marks one look's cells.
class Marker {
public:
    Marker(const LitLook& look, const CellTree& tree)
        : look_(look), lattice_(look.lattice()), tree_(tree), eye_(ViewPlane(look.toward())),
          marks_(lattice_.cells().size())
    {
    }

    CellMarks take() { return std::move(marks_); }

    /// Cells that the edge crosses, where it is further before them than rays skip.
    void mark_behind(const ContourEdge& edge)
    {
        const std::array seen = {eye_(edge.from), eye_(edge.to)};
        const std::array corners = {edge.from, edge.to};
        const Shade shade(eye_, seen, edge.grain);
        tree_.visit([&](const CellTree::Node& node) { return shade.meets(node); },
                    [&](Index cell) {
                        const Index facet = lattice_.cells()[cell].facet;
                        if (is_settled(cell, edge.approved))
                            return;
                        const ViewPiece piece =
                            piece_over(facet, seen, corners).from(skip_across(facet) - edge.grain);
                        mark_if_near(cell, piece, edge.grain, edge.approved);
                    });
    }

    /// Cells before which the triangle lies where rays begin to count: between the skip of the
    /// facet itself and the longest that a corner shared with other facets has.
    void mark_touched(Index facet, const NearTriangle& triangle)
    {
        std::array<Point, 3> seen;
        std::transform(triangle.corners.begin(), triangle.corners.end(), seen.begin(), eye_);
        const double grain = triangle.grain;
        const ViewPiece above =
            piece_over(facet, seen, triangle.corners).from(skip_across(facet) - grain);
        if (above.empty())
            return;
        const double margin = is_seen_beside(triangle) ? -side_by_side_mm : grain;
        const Shade shade(eye_, seen, grain);
        tree_.visit([&](const CellTree::Node& node) { return shade.meets(node); },
                    [&](Index cell) {
                        if (lattice_.cells()[cell].facet != facet ||
                            is_settled(cell, triangle.approved))
                            return;
                        const double longest = longest_skip(cell) * look_.cosine(facet);
                        mark_if_near(cell, above.up_to(longest + grain), margin, triangle.approved);
                    });
    }

    double skip_across(Index facet) const
    {
        const double cosine = look_.cosine(facet);
        return in_mm(skip_along_ray(look_.touch(), cosine)) * cosine;
    }

private:
    /// Turned away, or marked so already.
    bool is_settled(Index cell, bool approved) const
    {
        return look_.cosine(lattice_.cells()[cell].facet) <= 0 ||
               (marks_[cell] & mark_of(approved)) != 0;
    }

    ViewPiece piece_over(Index facet, std::span<const Point> seen,
                         std::span<const Point> corners) const
    {
        const Vector& normal = lattice_.facets()[facet].normal;
        const Point& on_facet = lattice_.vertices()[lattice_.facets()[facet].corner];
        ViewPiece piece;
        for (std::size_t i = 0; i < seen.size(); ++i)
            piece.add(seen[i].head<2>(), normal.dot(corners[i] - on_facet));
        return piece;
    }

    double longest_skip(Index cell) const
    {
        double longest = 0;
        for (const Index v : lattice_.cells()[cell].corners)
            longest = std::max(longest, double{look_.skip(v)});
        return longest;
    }

    /// A facet of this lamp's own lit surface that faces the eye too.
    bool is_seen_beside(const NearTriangle& t) const
    {
        return t.lit &&
               (t.corners[1] - t.corners[0]).cross(t.corners[2] - t.corners[0]).dot(eye_.toward) >
                   0;
    }

    void mark_if_near(Index cell, const ViewPiece& piece, double margin, bool approved)
    {
        if (piece.empty())
            return;
        std::array<Point2, 3> corners;
        for (int i = 0; i < 3; ++i) {
            const Point& p = lattice_.vertices()[lattice_.cells()[cell].corners[i]];
            corners[i] = {eye_.across.dot(p), eye_.up.dot(p)};
        }
        if (come_near(piece.places(), corners, margin))
            marks_[cell] |= mark_of(approved);
    }

    const LitLook& look_;
    const LitLattice& lattice_;
    const CellTree& tree_;
    EyeFrame eye_;
    CellMarks marks_;
};

} // namespace

Certificate::Certificate(const LampView& view, std::span<const PlacedMesh> obstacles,
                         const Point& origin, std::span<const Direction> directions,
                         const Workers& workers)
    : tree_(view.lattice), window_(ball_about(tree_), directions), zone_(view.lattice, view.touch)
{
    for (const PlacedMesh& obstacle : obstacles) {
        const SceneMesh mesh = in_scene(obstacle, origin);
        window_.add(mesh);
        zone_.add(view.lattice, tree_, mesh);
    }
    window_.sort_into_tiles(workers);
    zone_.sort_by_height();
}

CellMarks Certificate::marks(const LitLook& look) const
{
    Marker marker(look, tree_);
    window_.visit_outlines(look.toward(),
                           [&](const ContourEdge& edge) { marker.mark_behind(edge); });
    for (Index facet = 0; facet < look.lattice().facets().size(); ++facet) {
        if (look.cosine(facet) <= 0 || zone_.pairs_at(facet).empty())
            continue;
        const double skip = marker.skip_across(facet);
        for (const NearPair& pair : zone_.pairs_at(facet)) {
            if (pair.most_height < skip)
                break;
            marker.mark_touched(facet, zone_.triangle(pair.triangle));
        }
    }
    return marker.take();
}

} // namespace glim
