#include "visibility/lit_lattice.h"

#include <algorithm>
#include <cassert>
#include <unordered_map>

namespace glim {

namespace {

using Index = LitLattice::Index;

std::uint64_t key_of(Index a, Index b)
{
    return std::uint64_t{std::min(a, b)} << 32 | std::max(a, b);
}

/// Halves triangles across their longest edge; a midpoint of the same two ends is made once.
class Divider {
public:
    Divider(std::vector<Point>& vertices, Length pitch)
        : vertices_(vertices), pitch_squared_(in_mm(pitch) * in_mm(pitch))
    {
    }

    void divide(const std::array<Index, 3>& corners, Index facet, double area,
                std::vector<LitLattice::Cell>& out)
    {
        const int longest = longest_edge(corners);
        const Index from = corners[longest];
        const Index to = corners[(longest + 1) % 3];
        const Index opposite = corners[(longest + 2) % 3];
        if (squared_length(from, to) <= pitch_squared_) {
            out.push_back({corners, {}, facet, area});
            return;
        }
        const Index middle = midpoint(from, to);
        divide({from, middle, opposite}, facet, area / 2, out);
        divide({middle, to, opposite}, facet, area / 2, out);
    }

private:
    double squared_length(Index a, Index b) const
    {
        return (vertices_[a] - vertices_[b]).squaredNorm();
    }

    int longest_edge(const std::array<Index, 3>& c) const
    {
        const std::array lengths = {squared_length(c[0], c[1]), squared_length(c[1], c[2]),
                                    squared_length(c[2], c[0])};
        return static_cast<int>(std::max_element(lengths.begin(), lengths.end()) - lengths.begin());
    }

    Index midpoint(Index a, Index b)
    {
        const auto [found, fresh] =
            midpoints_.try_emplace(key_of(a, b), static_cast<Index>(vertices_.size()));
        if (fresh)
            vertices_.push_back((vertices_[a] + vertices_[b]) / 2);
        return found->second;
    }

    std::vector<Point>& vertices_;
    double pitch_squared_;
    std::unordered_map<std::uint64_t, Index> midpoints_;
};

} // namespace

LitLattice::LitLattice(const TriangleMesh& lit, Length pitch) : pitch_(pitch), vertices_(lit.points)
{
    assert(pitch > millimetres(0));
    Divider divider(vertices_, pitch);
    for (Index f = 0; f < lit.facets.size(); ++f) {
        const Vector area = area_vector(lit, f);
        const double size = area.norm();
        facets_.push_back({size > 0 ? Vector(area / size) : Vector(Vector::Zero()), size});
        if (size > 0)
            divider.divide(lit.facets[f], f, size, cells_);
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
            const Index a = cell.corners[i];
            const Index b = cell.corners[(i + 1) % 3];
            const auto [found, fresh] =
                numbers.try_emplace(key_of(a, b), static_cast<Index>(edges_.size()));
            if (fresh)
                edges_.push_back({{std::min(a, b), std::max(a, b)}});
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
