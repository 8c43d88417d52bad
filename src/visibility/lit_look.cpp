#include "visibility/lit_look.h"

#include "visibility/touch.h"

#include <algorithm>

namespace glim {

namespace {

using Index = LitLattice::Index;
using Hidden = std::vector<std::uint8_t>;

/// A rim between a lit and a hidden corner is found to 1/32 of the edge.
constexpr int bisection_rounds = 5;

constexpr float no_crossing = -1;

/// The lit share of a cell whose corner `odd` is of one kind and the other two of the other: the
/// rim is taken as straight between its crossings.
double corner_share(const LitLattice::Cell& cell, int odd, const std::vector<float>& crossings,
                    const std::vector<LitLattice::Edge>& edges)
{
    const auto away_from_odd = [&](Index edge) {
        const double along = crossings[edge];
        return edges[edge].ends[0] == cell.corners[odd] ? along : 1 - along;
    };
    return away_from_odd(cell.edges[odd]) * away_from_odd(cell.edges[(odd + 2) % 3]);
}

double lit_share(const LitLattice::Cell& cell, const Hidden& hidden,
                 const std::vector<float>& crossings, const std::vector<LitLattice::Edge>& edges)
{
    const std::array kinds = {hidden[cell.corners[0]], hidden[cell.corners[1]],
                              hidden[cell.corners[2]]};
    const int odd = kinds[1] == kinds[2] ? 0 : kinds[0] == kinds[2] ? 1 : 2;
    const double share = corner_share(cell, odd, crossings, edges);
    return kinds[odd] != 0 ? 1 - share : share;
}

} // namespace

LitLook::LitLook(const LampView& view, const Direction& toward) : view_(view), toward_(toward)
{
    cosines_.reserve(view.lattice.facets().size());
    for (const LitLattice::LitFacet& facet : view.lattice.facets()) {
        cosines_.push_back(toward.dot(facet.normal));
        bare_ += facet.area_mm2 * std::max(0.0, cosines_.back());
    }
}

std::optional<float> LitLook::skip_at(Index vertex) const
{
    std::optional<double> least;
    for (const Index f : view_.lattice.facets_at(vertex))
        if (cosines_[f] > 0)
            least = std::min(least.value_or(1), cosines_[f]);
    if (!least)
        return std::nullopt;
    return static_cast<float>(in_mm(skip_along_ray(view_.touch, *least)));
}

RayStart LitLook::start_at(const Point& p, float skip) const
{
    return {static_cast<float>(p.x()), static_cast<float>(p.y()), static_cast<float>(p.z()), skip};
}

Hidden LitLook::hidden_by(const Caster& caster, const Hidden* only) const
{
    const LitLattice& lattice = view_.lattice;
    std::vector<Index> asked;
    std::vector<RayStart> starts;
    for (Index v = 0; v < lattice.vertices().size(); ++v) {
        if (only != nullptr && (*only)[v] == 0)
            continue;
        if (const auto skip = skip_at(v)) {
            asked.push_back(v);
            starts.push_back(start_at(lattice.vertices()[v], *skip));
        }
    }
    const Hidden answers = caster.occluded(toward_, starts);
    Hidden hidden(lattice.vertices().size());
    for (std::size_t i = 0; i < asked.size(); ++i)
        hidden[asked[i]] = answers[i];
    return hidden;
}

std::vector<float> LitLook::rim_crossings(const Caster& caster, const Hidden& hidden) const
{
    const LitLattice& lattice = view_.lattice;
    std::vector<float> crossings(lattice.edges().size(), no_crossing);
    struct Search {
        Index edge;
        double from, to; // along the edge; the kind at `from` is that of ends[0]
        float skip;
    };
    std::vector<Search> searches;
    for (const LitLattice::Cell& cell : lattice.cells()) {
        if (!faces(cell))
            continue;
        for (const Index e : cell.edges) {
            const auto [a, b] = lattice.edges()[e].ends;
            if (hidden[a] == hidden[b] || crossings[e] != no_crossing)
                continue;
            crossings[e] = 0.5F; // claimed; the answer is written below
            searches.push_back({e, 0, 1, std::max(*skip_at(a), *skip_at(b))});
        }
    }
    std::vector<RayStart> starts(searches.size());
    for (int round = 0; round < bisection_rounds; ++round) {
        for (std::size_t i = 0; i < searches.size(); ++i) {
            const Search& s = searches[i];
            const auto [a, b] = lattice.edges()[s.edge].ends;
            const double middle = (s.from + s.to) / 2;
            starts[i] = start_at(
                lattice.vertices()[a] * (1 - middle) + lattice.vertices()[b] * middle, s.skip);
        }
        const Hidden answers = caster.occluded(toward_, starts);
        for (std::size_t i = 0; i < searches.size(); ++i) {
            Search& s = searches[i];
            const double middle = (s.from + s.to) / 2;
            (answers[i] == hidden[lattice.edges()[s.edge].ends[0]] ? s.from : s.to) = middle;
        }
    }
    for (const Search& s : searches)
        crossings[s.edge] = static_cast<float>((s.from + s.to) / 2);
    return crossings;
}

LitLook::Shares LitLook::shares(const Caster& caster, const Hidden& hidden) const
{
    const LitLattice& lattice = view_.lattice;
    const std::vector<float> crossings = rim_crossings(caster, hidden);
    Shares sum;
    for (const LitLattice::Cell& cell : lattice.cells()) {
        if (!faces(cell))
            continue;
        const double area = cell.area_mm2 * cosines_[cell.facet];
        const int dark =
            hidden[cell.corners[0]] + hidden[cell.corners[1]] + hidden[cell.corners[2]];
        if (dark == 0)
            sum.whole += area;
        if (dark == 0 || dark == 3)
            continue;
        sum.mixed += area;
        sum.squared_mixed += area * area;
        sum.seen_in_mixed += area * lit_share(cell, hidden, crossings, lattice.edges());
    }
    return sum;
}

LitLook::HiddenCorners LitLook::hidden_corners(const Hidden& hidden) const
{
    const LitLattice& lattice = view_.lattice;
    std::vector<double> area_at(lattice.vertices().size());
    for (const LitLattice::Cell& cell : lattice.cells())
        if (faces(cell))
            for (const Index v : cell.corners)
                area_at[v] += cell.area_mm2 * cosines_[cell.facet] / 3;
    HiddenCorners corners;
    for (Index v = 0; v < hidden.size(); ++v) {
        if (hidden[v] == 0)
            continue;
        corners.starts.push_back(start_at(lattice.vertices()[v], *skip_at(v)));
        corners.areas_mm2.push_back(area_at[v]);
    }
    return corners;
}

} // namespace glim
