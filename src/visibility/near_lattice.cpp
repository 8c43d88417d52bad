#include "visibility/near_lattice.h"

#include <algorithm>
#include <limits>

namespace glim {

namespace {

using Index = NearLattice::Index;

/// Gives the edges and facets that are used new numbers, in the order of their use.
class Renumbering {
public:
    explicit Renumbering(std::size_t count) : numbers_(count, unused) {}

    Index operator()(Index old)
    {
        if (numbers_[old] == unused) {
            numbers_[old] = static_cast<Index>(order_.size());
            order_.push_back(old);
        }
        return numbers_[old];
    }
    const std::vector<Index>& order() const { return order_; }

private:
    static constexpr Index unused = std::numeric_limits<Index>::max();
    std::vector<Index> numbers_, order_;
};

} // namespace

float LatticeDoubts::of(const LitLattice::Cell& cell, double cosine) const
{
    const auto& [a, b, c] = cell.corners;
    if (cosine <= -doubtful_cosine)
        return -1;
    if (cosine <= doubtful_cosine || hidden[a] != hidden[b] || hidden[b] != hidden[c])
        return 0;
    return std::min({corners[a], corners[b], corners[c]});
}

NearLattice::NearLattice(const LitLattice& lattice, const Direction& toward,
                         const LatticeDoubts& doubts)
{
    keep_cells(lattice, toward, doubts);
    keep_corners(lattice);
}

/// With the lattice's own numbers yet.
void NearLattice::keep_cells(const LitLattice& lattice, const Direction& toward,
                             const LatticeDoubts& doubts)
{
    std::vector<std::pair<float, const LitLattice::Cell*>> kept;
    Vector lit = Vector::Zero();
    const auto is_lit = [&](const LitLattice::Cell& cell) {
        return doubts.hidden[cell.corners[0]] == 0;
    };
    const auto area_vector_of = [&](const LitLattice::Cell& cell) {
        return Vector(cell.area_mm2 * lattice.facets()[cell.facet].normal);
    };
    for (const LitLattice::Cell& cell : lattice.cells()) {
        const float doubt = doubts.of(cell, toward.dot(lattice.facets()[cell.facet].normal));
        if (doubt >= 0 && doubt <= doubts.reach)
            kept.emplace_back(doubt, &cell);
        else if (doubt >= 0 && is_lit(cell))
            lit += area_vector_of(cell);
    }
    std::stable_sort(kept.begin(), kept.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    lit_from.assign(kept.size() + 1, lit);
    for (std::size_t i = kept.size(); i-- > 0;)
        lit_from[i] = is_lit(*kept[i].second)
                          ? Vector(lit_from[i + 1] + area_vector_of(*kept[i].second))
                          : lit_from[i + 1];
    for (const auto& [doubt, cell] : kept) {
        cell_doubts.push_back(doubt);
        cells.push_back({cell->corners, cell->edges, cell->facet, cell->area_mm2});
    }
}

void NearLattice::keep_corners(const LitLattice& lattice)
{
    for (const Cell& cell : cells)
        vertices.insert(vertices.end(), cell.corners.begin(), cell.corners.end());
    std::sort(vertices.begin(), vertices.end());
    vertices.erase(std::unique(vertices.begin(), vertices.end()), vertices.end());
    Renumbering corner(lattice.vertices().size()), edge(lattice.edges().size()),
        facet(lattice.facets().size());
    for (const Index v : vertices) {
        corner(v);
        points.push_back(lattice.vertices()[v]);
        const std::span<const Index> at = lattice.facets_at(v);
        corner_facets.push_back(
            {static_cast<Index>(facets_at.size()), static_cast<Index>(at.size())});
        for (const Index f : at)
            facets_at.push_back(facet(f));
    }
    for (Cell& cell : cells) {
        cell.facet = facet(cell.facet);
        for (Index& v : cell.corners)
            v = corner(v);
        for (Index& e : cell.edges)
            e = edge(e);
    }
    for (const Index e : edge.order())
        edges.push_back({corner(lattice.edges()[e].ends[0]), corner(lattice.edges()[e].ends[1])});
    for (const Index f : facet.order())
        normals.push_back(lattice.facets()[f].normal);
}

std::size_t NearLattice::doubtful_cells(Length reach) const
{
    const auto end =
        std::upper_bound(cell_doubts.begin(), cell_doubts.end(), static_cast<float>(in_mm(reach)));
    return static_cast<std::size_t>(end - cell_doubts.begin());
}

Slants::Slants(const NearLattice& lattice, const Direction& toward, Length touch)
{
    std::vector<float> of_facet;
    cosines.reserve(lattice.normals.size());
    of_facet.reserve(lattice.normals.size());
    for (const Vector& normal : lattice.normals) {
        const double cosine = toward.dot(normal);
        cosines.push_back(cosine);
        of_facet.push_back(cosine > 0 ? static_cast<float>(in_mm(skip_along_ray(touch, cosine)))
                                      : faces_away);
    }
    skips.reserve(lattice.corner_facets.size());
    for (const auto& [first, count] : lattice.corner_facets) {
        float longest = faces_away;
        for (Index f = first; f < first + count; ++f)
            longest = std::max(longest, of_facet[lattice.facets_at[f]]);
        skips.push_back(longest);
    }
}

} // namespace glim
