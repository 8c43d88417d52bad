#include "visibility/lit_lattice.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <map>
#include <tuple>
#include <unordered_map>

namespace glim {

namespace {

using Index = LitLattice::Index;

/// An edge longer than whole pitches by rounding alone gets no part more for it.
constexpr double grain_in_pitches = 1e-9;

int parts_of(double length, Length pitch)
{
    return std::max(1, static_cast<int>(std::ceil(length / in_mm(pitch) - grain_in_pitches)));
}

double distance_to_segment(const Point& p, const Point& a, const Point& b)
{
    const Vector along = b - a;
    const double share = std::clamp((p - a).dot(along) / along.squaredNorm(), 0.0, 1.0);
    return (p - (a + share * along)).norm();
}

/// Lays rows across a facet, parallel to its shortest edge, and joins neighbouring rows by cells.
class FacetDivider {
public:
    FacetDivider(std::vector<Point>& vertices, Length pitch) : vertices_(vertices), pitch_(pitch) {}

    void divide(const Facet& corners, Index facet, std::vector<LitLattice::Cell>& out)
    {
        const auto [apex, left, right] = with_shortest_edge_last(corners);
        const int rows = parts_of(
            distance_to_segment(vertices_[apex], vertices_[left], vertices_[right]), pitch_);
        const double base = length(left, right);
        std::vector<Index> above = {apex};
        for (int r = 1; r <= rows; ++r) {
            const int parts = parts_of(base * r / rows, pitch_);
            std::vector<Index> row =
                row_between(edge_point(apex, left, r, rows), edge_point(apex, right, r, rows),
                            parts, r == rows);
            join(above, row, facet, out);
            above = std::move(row);
        }
    }

private:
    double length(Index a, Index b) const { return (vertices_[a] - vertices_[b]).norm(); }

    /// The same turn of corners, begun so that the shortest edge lies opposite the first.
    std::array<Index, 3> with_shortest_edge_last(const Facet& c) const
    {
        int apex = 0;
        for (int i = 1; i < 3; ++i)
            if (length(c[(i + 1) % 3], c[(i + 2) % 3]) <
                length(c[(apex + 1) % 3], c[(apex + 2) % 3]))
                apex = i;
        return {c[apex], c[(apex + 1) % 3], c[(apex + 2) % 3]};
    }

    /// Part `i` of `n` on the way from a to b. Counted from the lower index, so that the neighbour
    /// across this edge finds the same vertex if it cuts the edge into as many parts.
    Index edge_point(Index a, Index b, int i, int n)
    {
        if (i == 0 || i == n)
            return i == 0 ? a : b;
        if (a > b) {
            std::swap(a, b);
            i = n - i;
        }
        const auto [found, fresh] =
            on_edges_.try_emplace({a, b, i, n}, static_cast<Index>(vertices_.size()));
        if (fresh)
            vertices_.push_back(vertices_[a] + (vertices_[b] - vertices_[a]) * (double(i) / n));
        return found->second;
    }

    std::vector<Index> row_between(Index from, Index to, int parts, bool on_edge)
    {
        std::vector<Index> row = {from};
        for (int i = 1; i < parts; ++i)
            row.push_back(on_edge ? edge_point(from, to, i, parts)
                                  : inner_point(from, to, i, parts));
        row.push_back(to);
        return row;
    }

    Index inner_point(Index from, Index to, int i, int n)
    {
        vertices_.push_back(vertices_[from] + (vertices_[to] - vertices_[from]) * (double(i) / n));
        return static_cast<Index>(vertices_.size() - 1);
    }

    /// Zips two rows together, always with the shorter step next.
    void join(const std::vector<Index>& above, const std::vector<Index>& below, Index facet,
              std::vector<LitLattice::Cell>& out)
    {
        const std::size_t a_parts = above.size() - 1;
        const std::size_t b_parts = below.size() - 1;
        std::size_t a = 0;
        std::size_t b = 0;
        while (a < a_parts || b < b_parts) {
            const bool step_below =
                a == a_parts || (b < b_parts && (b + 1) * a_parts <= (a + 1) * b_parts);
            if (step_below) {
                out.push_back(cell(above[a], below[b], below[b + 1], facet));
                ++b;
            } else {
                out.push_back(cell(above[a], below[b], above[a + 1], facet));
                ++a;
            }
        }
    }

    LitLattice::Cell cell(Index p, Index q, Index r, Index facet) const
    {
        const Vector twice = (vertices_[q] - vertices_[p]).cross(vertices_[r] - vertices_[p]);
        return {{p, q, r}, {}, facet, twice.norm() / 2};
    }

    std::vector<Point>& vertices_;
    Length pitch_;
    std::map<std::tuple<Index, Index, int, int>, Index> on_edges_;
};

} // namespace

LitLattice::LitLattice(const TriangleMesh& lit, Length pitch) : pitch_(pitch), vertices_(lit.points)
{
    assert(pitch > millimetres(0));
    FacetDivider divider(vertices_, pitch);
    for (Index f = 0; f < lit.facets.size(); ++f) {
        const Vector area = area_vector(lit, f);
        const double size = area.norm();
        facets_.push_back(
            {size > 0 ? Vector(area / size) : Vector(Vector::Zero()), size, lit.facets[f][0]});
        if (size > 0)
            divider.divide(lit.facets[f], f, cells_);
    }
    number_edges();
    gather_facets_at_vertices();
}

void LitLattice::number_edges()
{
    std::unordered_map<std::uint64_t, Index> numbers;
    numbers.reserve(cells_.size() * 2);
    for (Cell& cell : cells_)
        for (int i = 0; i < 3; ++i) {
            const auto [a, b] = std::minmax(cell.corners[i], cell.corners[(i + 1) % 3]);
            const auto [found, fresh] =
                numbers.try_emplace(std::uint64_t{a} << 32 | b, static_cast<Index>(edges_.size()));
            if (fresh)
                edges_.push_back({{a, b}});
            cell.edges[i] = found->second;
        }
}

void LitLattice::gather_facets_at_vertices()
{
    std::vector<std::pair<Index, Index>> pairs; // vertex, facet
    for (const Cell& cell : cells_)
        for (const Index v : cell.corners)
            pairs.emplace_back(v, cell.facet);
    std::sort(pairs.begin(), pairs.end());
    pairs.erase(std::unique(pairs.begin(), pairs.end()), pairs.end());
    facets_at_from_.assign(vertices_.size() + 1, 0);
    for (const auto& [vertex, facet] : pairs) {
        ++facets_at_from_[vertex + 1];
        facets_at_.push_back(facet);
    }
    for (std::size_t v = 0; v < vertices_.size(); ++v)
        facets_at_from_[v + 1] += facets_at_from_[v];
}

std::span<const LitLattice::Index> LitLattice::facets_at(Index vertex) const
{
    const Index from = facets_at_from_[vertex];
    return std::span(facets_at_).subspan(from, facets_at_from_[vertex + 1] - from);
}

} // namespace glim
