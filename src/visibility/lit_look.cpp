#include "visibility/lit_look.h"

#include "visibility/touch.h"

#include <algorithm>

namespace glim {

namespace {

using Index = LitLattice::Index;
using Hidden = LitLook::Hidden;

/// A rim between a lit and a hidden corner is found to 1/32 of the edge.
constexpr int bisection_rounds = 5;

/// In place of a skip or of a crossing.
constexpr float none = -1;

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

bool is_uniform(const LitLattice::Cell& cell, const Hidden& hidden)
{
    return hidden[cell.corners[0]] == hidden[cell.corners[1]] &&
           hidden[cell.corners[1]] == hidden[cell.corners[2]];
}

} // namespace

LitLook::LitLook(const LampView& view, const Direction& toward) : view_(view), toward_(toward)
{
    cosines_.reserve(view.lattice.facets().size());
    for (const LitLattice::LitFacet& facet : view.lattice.facets()) {
        cosines_.push_back(toward.dot(facet.normal));
        bare_ += facet.area_mm2 * std::max(0.0, cosines_.back());
    }
    set_skips();
}

void LitLook::set_skips()
{
    std::vector<float> of_facet;
    of_facet.reserve(cosines_.size());
    for (const double cosine : cosines_)
        of_facet.push_back(
            cosine > 0 ? static_cast<float>(in_mm(skip_along_ray(view_.touch, cosine))) : none);
    skips_.reserve(view_.lattice.vertices().size());
    for (Index v = 0; v < view_.lattice.vertices().size(); ++v) {
        float longest = none;
        for (const Index f : view_.lattice.facets_at(v))
            longest = std::max(longest, of_facet[f]);
        skips_.push_back(longest);
    }
}

RayStart LitLook::start_at(const Point& p, float skip) const
{
    return {static_cast<float>(p.x()), static_cast<float>(p.y()), static_cast<float>(p.z()), skip};
}

Point LitLook::along_edge(Index edge, double along) const
{
    const auto [a, b] = view_.lattice.edges()[edge].ends;
    return view_.lattice.vertices()[a] * (1 - along) + view_.lattice.vertices()[b] * along;
}

LitLook::FrontCorners LitLook::front_corners(const Hidden* only) const
{
    FrontCorners corners;
    corners.vertices.reserve(skips_.size());
    corners.starts.reserve(skips_.size());
    for (Index v = 0; v < skips_.size(); ++v) {
        if (skips_[v] < 0 || (only != nullptr && (*only)[v] == 0))
            continue;
        corners.vertices.push_back(v);
        corners.starts.push_back(start_at(view_.lattice.vertices()[v], skips_[v]));
    }
    return corners;
}

Hidden LitLook::hidden_by(const Caster& caster, const Hidden* only) const
{
    const FrontCorners asked = front_corners(only);
    const Hidden answers = caster.occluded(toward_, asked.starts);
    Hidden hidden(view_.lattice.vertices().size());
    for (std::size_t i = 0; i < answers.size(); ++i)
        hidden[asked.vertices[i]] = answers[i];
    return hidden;
}

LitLook::Rim LitLook::rim(const Caster& caster, const Hidden& hidden) const
{
    const LitLattice& lattice = view_.lattice;
    Rim crossings(lattice.edges().size(), none);
    struct Search {
        Index edge;
        double from, to; // along the edge; the kind at `from` is that of its first end
        float skip;
    };
    std::vector<Search> searches;
    for (const LitLattice::Cell& cell : lattice.cells()) {
        if (!faces(cell) || is_uniform(cell, hidden))
            continue;
        for (const Index e : cell.edges) {
            const auto [a, b] = lattice.edges()[e].ends;
            if (hidden[a] == hidden[b] || crossings[e] != none)
                continue;
            crossings[e] = 0.5F; // claimed; the answer is written below
            searches.push_back({e, 0, 1, std::max(skips_[a], skips_[b])});
        }
    }
    std::vector<RayStart> starts(searches.size());
    for (int round = 0; round < bisection_rounds; ++round) {
        for (std::size_t i = 0; i < searches.size(); ++i) {
            const Search& s = searches[i];
            starts[i] = start_at(along_edge(s.edge, (s.from + s.to) / 2), s.skip);
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

LitLook::Shares LitLook::shares(const Hidden& hidden, const Rim& rim,
                                std::span<const std::uint8_t> marks) const
{
    const LitLattice& lattice = view_.lattice;
    Shares sum;
    for (std::size_t c = 0; c < lattice.cells().size(); ++c) {
        const LitLattice::Cell& cell = lattice.cells()[c];
        if (!faces(cell))
            continue;
        const bool uniform = is_uniform(cell, hidden);
        const bool lit = hidden[cell.corners[0]] == 0;
        const bool marked = !marks.empty() && marks[c] != 0;
        if (uniform && !marked && !lit)
            continue;
        const double area = projected_mm2(cell);
        if (uniform && !marked) {
            sum.whole += area;
            continue;
        }
        sum.mixed += area;
        sum.squared_mixed += area * area;
        if (!uniform)
            sum.seen_in_mixed += area * lit_share(cell, hidden, rim, lattice.edges());
        else if (lit)
            sum.seen_in_mixed += area;
        if (uniform)
            sum.missed += area;
    }
    return sum;
}

double LitLook::weighed_mm2(const Hidden& hidden, const Rim& rim,
                            std::span<const float> brightness) const
{
    const LitLattice& lattice = view_.lattice;
    double sum = 0;
    for (std::size_t c = 0; c < lattice.cells().size(); ++c) {
        const LitLattice::Cell& cell = lattice.cells()[c];
        if (!faces(cell))
            continue;
        const bool lit = hidden[cell.corners[0]] == 0;
        const double share = !is_uniform(cell, hidden)
                                 ? lit_share(cell, hidden, rim, lattice.edges())
                                 : static_cast<double>(lit);
        sum += projected_mm2(cell) * brightness[c] * share;
    }
    return sum;
}

double LitLook::weighed_bare_mm2(std::span<const float> brightness) const
{
    double sum = 0;
    for (std::size_t c = 0; c < view_.lattice.cells().size(); ++c)
        if (const LitLattice::Cell& cell = view_.lattice.cells()[c]; faces(cell))
            sum += projected_mm2(cell) * brightness[c];
    return sum;
}

double LitLook::rim_across_mm(const LitLattice::Cell& cell, const Rim& rim) const
{
    std::array<Point, 2> ends = {Point::Zero(), Point::Zero()};
    std::size_t count = 0;
    for (const Index e : cell.edges)
        if (rim[e] >= 0 && count < 2)
            ends[count++] = along_edge(e, rim[e]);
    const Vector way = ends[1] - ends[0];
    return (way - toward_.dot(way) * toward_.vector()).norm();
}

std::vector<double> LitLook::areas_of_mm2(const Hidden& hidden) const
{
    std::vector<double> areas(hidden.size());
    for (const LitLattice::Cell& cell : view_.lattice.cells())
        for (const Index v : cell.corners)
            if (hidden[v] != 0 && faces(cell))
                areas[v] += projected_mm2(cell) / 3;
    return areas;
}

} // namespace glim
