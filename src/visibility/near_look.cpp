#include "visibility/near_look.h"

#include "units/trig.h"
#include "visibility/lit_look.h"
#include "visibility/rim_doubts.h"
#include "visibility/touch.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace glim {

namespace {

/// Rims are found to about this along an edge, more or less by chance: over a hundred edges of some
/// 3 mm that leaves an area off by about 2 mm2.
constexpr double rim_grain_mm = 0.4;
constexpr int least_rounds = 3, most_rounds = 7, close_rounds = 10;

constexpr float none = -1;

using Hidden = LitLook::Hidden;

RayStart start_at(const Point& p, float skip)
{
    return {static_cast<float>(p.x()), static_cast<float>(p.y()), static_cast<float>(p.z()), skip};
}

/// Gives the corners, edges and facets that are used new numbers, in the order of their use.
class Renumbering {
public:
    std::uint32_t operator()(std::uint32_t old)
    {
        const auto [at, is_new] = numbers_.try_emplace(old, order_.size());
        if (is_new)
            order_.push_back(old);
        return at->second;
    }
    const std::vector<std::uint32_t>& order() const { return order_; }

private:
    std::unordered_map<std::uint32_t, std::uint32_t> numbers_;
    std::vector<std::uint32_t> order_;
};

/// Of halvings, by the mean length of the lattice's edges.
int rounds_for(const LitLattice& lattice)
{
    double area = 0;
    for (const LitLattice::Cell& cell : lattice.cells())
        area += cell.area_mm2;
    const double edge = std::sqrt(2 * area / static_cast<double>(lattice.cells().size() + 1));
    const double halvings = std::log2(std::max(edge, rim_grain_mm) / rim_grain_mm);
    return std::clamp(static_cast<int>(std::ceil(halvings)), least_rounds, most_rounds);
}

/// Where along an edge the search for the rim begins. At the middle of all of them, a straight rim
/// along a row of cells would be off by the same way at every edge; spread, it averages out.
double first_split(std::size_t edge)
{
    constexpr double golden = 0.6180339887498949;
    const double turns = golden * static_cast<double>(edge);
    return 0.3 + 0.4 * (turns - std::floor(turns));
}

} // namespace

/// How far bodies may move, mm, before a corner or a cell of the coarse lattice may look otherwise;
/// infinity: farther than asked.
struct NearLook::Doubts {
    std::vector<float> corners;
    Hidden hidden; ///< as drawn, one a corner
    double doubtful_cosine;
    float reach;

    /// Below 0: it never faces the eye.
    float of(const LitLattice::Cell& cell, double cosine) const
    {
        const auto& [a, b, c] = cell.corners;
        if (cosine <= -doubtful_cosine)
            return -1;
        if (cosine <= doubtful_cosine || hidden[a] != hidden[b] || hidden[b] != hidden[c])
            return 0;
        return std::min({corners[a], corners[b], corners[c]});
    }
};

NearLook::NearLook(const Prepared& lamp, const Direction& toward, const Nearby& nearby)
    : drawn_toward_(toward), touch_(lamp.coarse.touch), rounds_(rounds_for(lamp.coarse.lattice))
{
    Doubts doubts{
        corner_doubts({lamp.fine, lamp.strangers}, lamp.coarse.lattice, toward, nearby.reach),
        LitLook(lamp.coarse, toward).hidden_by(lamp.coarse.all), sin(nearby.turn),
        static_cast<float>(in_mm(nearby.reach))};
    keep_cells(lamp.coarse.lattice, doubts);
    keep_corners(lamp.coarse.lattice, doubts);
}

/// With the lattice's own numbers yet.
void NearLook::keep_cells(const LitLattice& lattice, const Doubts& doubts)
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
        const float doubt = doubts.of(cell, drawn_toward_.dot(lattice.facets()[cell.facet].normal));
        if (doubt >= 0 && doubt <= doubts.reach)
            kept.emplace_back(doubt, &cell);
        else if (doubt >= 0 && is_lit(cell))
            lit += area_vector_of(cell);
    }
    std::stable_sort(kept.begin(), kept.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    lit_from_.assign(kept.size() + 1, lit);
    for (std::size_t i = kept.size(); i-- > 0;)
        lit_from_[i] = is_lit(*kept[i].second)
                           ? Vector(lit_from_[i + 1] + area_vector_of(*kept[i].second))
                           : lit_from_[i + 1];
    for (const auto& [doubt, cell] : kept) {
        cell_doubts_.push_back(doubt);
        cells_.push_back({cell->corners, cell->edges, cell->facet, cell->area_mm2});
    }
}

void NearLook::keep_corners(const LitLattice& lattice, const Doubts& doubts)
{
    std::vector<Index> used;
    for (const Cell& cell : cells_)
        used.insert(used.end(), cell.corners.begin(), cell.corners.end());
    std::sort(used.begin(), used.end());
    used.erase(std::unique(used.begin(), used.end()), used.end());
    std::stable_sort(used.begin(), used.end(),
                     [&](Index a, Index b) { return doubts.corners[a] < doubts.corners[b]; });
    Renumbering corners, edges, facets;
    for (const Index v : used) {
        corners(v);
        points_.push_back(lattice.vertices()[v]);
        corner_doubts_.push_back(doubts.corners[v]);
        hidden_.push_back(doubts.hidden[v]);
        const std::span<const Index> at = lattice.facets_at(v);
        corner_facets_.push_back(
            {static_cast<Index>(facets_at_.size()), static_cast<Index>(at.size())});
        for (const Index f : at)
            facets_at_.push_back(facets(f));
    }
    for (Cell& cell : cells_) {
        cell.facet = facets(cell.facet);
        for (Index& v : cell.corners)
            v = corners(v);
        for (Index& e : cell.edges)
            e = edges(e);
    }
    for (const Index e : edges.order())
        edges_.push_back(
            {{corners(lattice.edges()[e].ends[0]), corners(lattice.edges()[e].ends[1])}});
    for (const Index f : facets.order())
        normals_.push_back(lattice.facets()[f].normal);
}

std::size_t NearLook::corners(Length reach) const
{
    const auto end = std::upper_bound(corner_doubts_.begin(), corner_doubts_.end(),
                                      static_cast<float>(in_mm(reach)));
    return static_cast<std::size_t>(end - corner_doubts_.begin());
}

struct NearLook::Work {
    std::size_t asked = 0;       ///< so many corners, the most doubtful ones
    std::size_t cells = 0;       ///< likewise
    int rounds = 0;              ///< of halvings along an edge
    std::vector<double> cosines; ///< one a facet
    std::vector<float> skips;    ///< one a corner that is asked; below 0: faces away
    Hidden hidden;
    std::vector<float> crossings; ///< one an edge
};

/// By the most slanted facet there that faces the eye, as LitLook has it.
float NearLook::skip_at(Index corner, const std::vector<double>& cosines) const
{
    float longest = none;
    const auto [first, count] = corner_facets_[corner];
    for (Index f = first; f < first + count; ++f)
        if (const double cosine = cosines[facets_at_[f]]; cosine > 0)
            longest = std::max(longest, static_cast<float>(in_mm(skip_along_ray(touch_, cosine))));
    return longest;
}

void NearLook::ask_corners(Work& work, const Direction& toward, const Caster& obstacles) const
{
    work.hidden = hidden_;
    work.skips.reserve(work.asked);
    std::vector<RayStart> starts;
    std::vector<Index> who;
    starts.reserve(work.asked);
    who.reserve(work.asked);
    for (Index v = 0; v < work.asked; ++v) {
        work.skips.push_back(skip_at(v, work.cosines));
        work.hidden[v] = 0;
        if (work.skips[v] < 0)
            continue;
        who.push_back(v);
        starts.push_back(start_at(points_[v], work.skips[v]));
    }
    const Hidden answers = obstacles.occluded(toward, starts);
    for (std::size_t i = 0; i < who.size(); ++i)
        work.hidden[who[i]] = answers[i];
}

Area NearLook::visible(const Direction& toward, const Caster& obstacles, Length reach,
                       RimSearch search) const
{
    Work work;
    work.rounds = search == RimSearch::quick ? rounds_ : close_rounds;
    work.asked = corners(reach);
    work.cells = static_cast<std::size_t>(std::upper_bound(cell_doubts_.begin(), cell_doubts_.end(),
                                                           static_cast<float>(in_mm(reach))) -
                                          cell_doubts_.begin());
    work.cosines.reserve(normals_.size());
    for (const Vector& normal : normals_)
        work.cosines.push_back(toward.dot(normal));
    ask_corners(work, toward, obstacles);
    find_rims(work, toward, obstacles);
    double seen = std::max(0.0, toward.dot(lit_from_[work.cells]));
    for (std::size_t c = 0; c < work.cells; ++c)
        seen += seen_mm2(work, cells_[c]);
    return square_millimetres(seen);
}

void NearLook::find_rims(Work& work, const Direction& toward, const Caster& obstacles) const
{
    struct Search {
        Index edge;
        double from, to;
        float skip;
    };
    work.crossings.assign(edges_.size(), none);
    std::vector<Search> searches;
    const auto skip_of = [&](Index v) { return v < work.asked ? work.skips[v] : none; };
    for (const Cell& cell : std::span(cells_).first(work.cells)) {
        if (work.cosines[cell.facet] <= 0)
            continue;
        for (const Index e : cell.edges) {
            const auto [a, b] = edges_[e].ends;
            if (work.hidden[a] == work.hidden[b] || work.crossings[e] != none)
                continue;
            work.crossings[e] = 0.5F; // claimed
            const float own =
                static_cast<float>(in_mm(skip_along_ray(touch_, work.cosines[cell.facet])));
            searches.push_back({e, 0, 1, std::max({own, skip_of(a), skip_of(b)})});
        }
    }
    std::vector<RayStart> starts(searches.size());
    const auto middle = [](const Search& s) {
        const bool whole = s.to - s.from == 1;
        return whole ? first_split(s.edge) : (s.from + s.to) / 2;
    };
    for (int round = 0; round < work.rounds; ++round) {
        for (std::size_t i = 0; i < searches.size(); ++i) {
            const auto [a, b] = edges_[searches[i].edge].ends;
            const double along = middle(searches[i]);
            starts[i] = start_at(points_[a] * (1 - along) + points_[b] * along, searches[i].skip);
        }
        const Hidden answers = obstacles.occluded(toward, starts);
        for (std::size_t i = 0; i < searches.size(); ++i) {
            Search& s = searches[i];
            const double at = middle(s);
            (answers[i] == work.hidden[edges_[s.edge].ends[0]] ? s.from : s.to) = at;
        }
    }
    for (const Search& s : searches)
        work.crossings[s.edge] = static_cast<float>(middle(s));
}

double NearLook::seen_mm2(const Work& work, const Cell& cell) const
{
    const double cosine = work.cosines[cell.facet];
    if (cosine <= 0)
        return 0;
    const double area = cell.area_mm2 * cosine;
    const std::array kinds = {work.hidden[cell.corners[0]], work.hidden[cell.corners[1]],
                              work.hidden[cell.corners[2]]};
    if (kinds[0] == kinds[1] && kinds[1] == kinds[2])
        return kinds[0] == 0 ? area : 0;
    // The rim is taken as straight between its crossings: it cuts off the odd corner.
    const std::size_t odd = kinds[1] == kinds[2] ? 0 : kinds[0] == kinds[2] ? 1 : 2;
    const auto away_from_odd = [&](Index edge) {
        const double along = work.crossings[edge];
        return edges_[edge].ends[0] == cell.corners[odd] ? along : 1 - along;
    };
    const double share = away_from_odd(cell.edges[odd]) * away_from_odd(cell.edges[(odd + 2) % 3]);
    return area * (kinds[odd] != 0 ? 1 - share : share);
}

} // namespace glim
