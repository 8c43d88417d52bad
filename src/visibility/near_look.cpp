#include "visibility/near_look.h"

#include "units/trig.h"
#include "visibility/lit_look.h"
#include "visibility/rim_doubts.h"

#include <algorithm>
#include <bit>
#include <cassert>
#include <cmath>
#include <limits>
#include <optional>

namespace glim {

namespace {

/// Rims are found to about this along an edge as the eye sees it, more or less by chance: over a
/// hundred edges of some 3 mm that leaves an area off by about 2 mm2.
constexpr double rim_grain_mm = 0.4;
constexpr int least_rounds = 1, most_rounds = 7, close_rounds = 10;

/// A turn that is rounding and nothing else: over a metre, a nanometre.
constexpr double no_turn = 1e-9;

constexpr float none = -1;

RayStart start_at(const Point& p, float skip)
{
    return {static_cast<float>(p.x()), static_cast<float>(p.y()), static_cast<float>(p.z()), skip};
}

/// Of halvings along an edge.
int rounds_for(double seen_mm)
{
    const double halvings = std::log2(std::max(seen_mm, rim_grain_mm) / rim_grain_mm);
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

float least_of(const PerSector<float>& all) { return *std::min_element(all.begin(), all.end()); }

Box box_around(const std::vector<Point>& points)
{
    Box box;
    for (const Point& p : points)
        box.add(p);
    return box;
}

Box widened(Box box, double by_mm)
{
    box.least -= Vector::Constant(by_mm);
    box.most += Vector::Constant(by_mm);
    return box;
}

} // namespace

/// What one direction shows as drawn, by the lattice's own numbers.
struct NearLook::Drawn {
    Drawn(const Prepared& lamp, const Direction& toward);
    void add(const Flock& flock);

    LitLook fine, coarse;
    Box around; ///< the lit face and what is asked beside it
    std::vector<FlockBefore> flocks;
    /// By flock, one a corner; empty: it never moves.
    std::vector<std::vector<PerSector<float>>> corner_doubts;
    std::vector<Hiders> hiders;
    LatticeDoubts doubts;
};

NearLook::Drawn::Drawn(const Prepared& lamp, const Direction& toward)
    : fine(lamp.fine, toward), coarse(lamp.coarse, toward),
      // Rings of points beside the face go a pitch beyond the reach.
      around(
          widened(box_around(lamp.fine.lattice.vertices()), 2 * in_mm(lamp.fine.lattice.pitch()))),
      hiders(lamp.coarse.lattice.vertices().size()),
      doubts{std::vector<float>(hiders.size(), std::numeric_limits<float>::infinity()),
             std::vector<std::uint8_t>(hiders.size()), 0, sin(lamp.turn)}
{
    assert(lamp.flocks.size() <= most_flocks);
    for (const Flock& flock : lamp.flocks)
        add(flock);
}

void NearLook::Drawn::add(const Flock& flock)
{
    const Hiders bit = Hiders{1} << flocks.size();
    const Direction& toward = coarse.toward();
    FlockBefore before{bodies_before(around, flock, toward), {}, flock.reach};
    for (const std::uint32_t body : before.bodies)
        before.boxes.push_back(flock.boxes[body]);
    flocks.push_back(std::move(before));
    corner_doubts.emplace_back();
    if (flocks.back().bodies.empty())
        return;
    const LitLook::Hidden hidden = coarse.hidden_by(flock.caster);
    for (std::size_t v = 0; v < hidden.size(); ++v) {
        hiders[v] |= hidden[v] != 0 ? bit : 0;
        doubts.hidden[v] |= hidden[v];
    }
    if (flock.reach <= Length())
        return;
    std::vector<PerSector<float>> own = glim::corner_doubts(fine, flock, coarse);
    for (std::size_t v = 0; v < own.size(); ++v)
        doubts.corners[v] = std::min(doubts.corners[v], least_of(own[v]));
    doubts.reach = std::max(doubts.reach, static_cast<float>(in_mm(flock.reach)));
    corner_doubts.back() = std::move(own);
}

NearLook::NearLook(const Prepared& lamp, const Direction& toward)
    : NearLook(lamp, Drawn(lamp, toward))
{
}

NearLook::NearLook(const Prepared& lamp, const Drawn& drawn)
    : plane_(drawn.coarse.toward()), touch_(lamp.coarse.touch),
      lit_(box_around(lamp.coarse.lattice.vertices())),
      lattice_(lamp.coarse.lattice, plane_.toward, drawn.doubts),
      slants_(lattice_, plane_.toward, touch_)
{
    rounds_.reserve(lattice_.edges.size());
    for (const auto& [a, b] : lattice_.edges)
        rounds_.push_back(rounds_for(
            (plane_.project(lattice_.points[a]) - plane_.project(lattice_.points[b])).norm()));
    hiders_.reserve(lattice_.vertices.size());
    for (const Index v : lattice_.vertices)
        hiders_.push_back(drawn.hiders[v]);
    for (std::size_t f = 0; f < drawn.flocks.size(); ++f) {
        Watched& watched = flocks_.emplace_back();
        watched.before = drawn.flocks[f];
        const auto reach = static_cast<float>(in_mm(watched.before.reach));
        const std::vector<PerSector<float>>& doubts = drawn.corner_doubts[f];
        for (Index i = 0; i < lattice_.vertices.size() && !doubts.empty(); ++i) {
            const PerSector<float>& doubt = doubts[lattice_.vertices[i]];
            if (least_of(doubt) > reach)
                continue;
            watched.corners.push_back(i);
            for (std::size_t s = 0; s < doubt.size(); ++s)
                watched.doubts[s].push_back(doubt[s]);
        }
    }
}

bool NearLook::Watched::may_change(std::size_t place, const Drift& drift) const
{
    const auto reach = static_cast<float>(in_mm(drift.reach));
    for (std::size_t s = 0; s < doubts.size(); ++s)
        if ((drift.behind >> s & 1U) != 0 && doubts[s][place] <= reach)
            return true;
    return false;
}

/// Nowhere, where nothing of the flock stands before the lit face.
Drift NearLook::drift(std::size_t flock, const StrayedBodies& strayed) const
{
    return drift_toward(plane_, flocks_[flock].before, lit_, strayed, strayed.flocks[flock]);
}

std::size_t NearLook::corners(const StrayedBodies& strayed) const
{
    std::size_t count = 0;
    for (std::size_t f = 0; f < flocks_.size(); ++f)
        if (const Drift strays = drift(f, strayed); strays.strays)
            for (std::size_t i = 0; i < flocks_[f].corners.size(); ++i)
                count += flocks_[f].may_change(i, strays) ? 1 : 0;
    return count;
}

/// Looks for where, along an edge from a hidden corner to a lit one, nothing hides any more.
struct NearLook::RimOnEdge {
    Index edge;
    int rounds; ///< of halvings
    float skip;
    Hiders hiders;           ///< of the hidden end: nobody else is asked
    double from = 0, to = 1; ///< along the edge; the kind at `from` is that of its first end
    bool hidden = false;     ///< whether the middle is

    double middle() const { return to - from == 1 ? first_split(edge) : (from + to) / 2; }
};

/// One build's look; in the frame of the lit face as built.
struct NearLook::Work {
    Direction toward;
    const Slants& slants;
    RimSearch search;
    Length reach = {};               ///< of all flocks
    std::size_t cells = 0;           ///< so many may look otherwise
    std::vector<Hiders> hiders = {}; ///< one a corner
    std::vector<Hiders> unsure = {}; ///< those who may hide it otherwise than as drawn
    std::vector<std::vector<Index>> unsure_of = {}; ///< by flock: those corners
    std::vector<float> crossings = {};              ///< one an edge

    bool is_hidden(Index corner) const { return hiders[corner] != 0; }
};

Area NearLook::visible(const StrayedBodies& strayed, RimSearch search) const
{
    const Direction toward = toward_as_built(strayed);
    std::optional<Slants> turned;
    if (toward.vector() != plane_.toward.vector())
        turned.emplace(lattice_, toward, touch_);
    Work work{toward, turned ? *turned : slants_, search};
    ask_corners(work, strayed);
    work.cells = lattice_.doubtful_cells(work.reach);
    find_rims(work, strayed);
    double seen = std::max(0.0, toward.dot(lattice_.lit_from[work.cells]));
    for (std::size_t c = 0; c < work.cells; ++c)
        seen += seen_mm2(work, lattice_.cells[c]);
    return square_millimetres(seen);
}

Area NearLook::surely_visible(const StrayedBodies& strayed) const
{
    Length reach;
    for (std::size_t f = 0; f < flocks_.size(); ++f)
        reach = std::max(reach, drift(f, strayed).reach);
    const Vector& lit = lattice_.lit_from[lattice_.doubtful_cells(reach)];
    return square_millimetres(std::max(0.0, toward_as_built(strayed).dot(lit)));
}

/// In the lit face's own frame; as drawn, unless the face has turned.
Direction NearLook::toward_as_built(const StrayedBodies& strayed) const
{
    const Direction toward = strayed.lit_from_scene(plane_.toward);
    const bool turned = (toward.vector() - plane_.toward.vector()).norm() > no_turn;
    return turned ? toward : plane_.toward;
}

// Those are asked first who hid a corner as drawn. Whoever is left unasked, because another hides
// it, counts as hiding it: along edges from there he is asked.
void NearLook::ask_corners(Work& work, const StrayedBodies& strayed) const
{
    find_unsure(work, strayed);
    work.hiders.resize(hiders_.size());
    for (std::size_t v = 0; v < hiders_.size(); ++v)
        work.hiders[v] = hiders_[v] & ~work.unsure[v];
    for (const bool hid : {true, false})
        for (std::size_t f = 0; f < flocks_.size(); ++f)
            ask_corners_of(f, hid, work, strayed.flocks[f]);
    for (std::size_t v = 0; v < hiders_.size(); ++v)
        if (work.hiders[v] != 0)
            work.hiders[v] |= work.unsure[v];
}

void NearLook::find_unsure(Work& work, const StrayedBodies& strayed) const
{
    work.unsure.resize(hiders_.size());
    work.unsure_of.resize(flocks_.size());
    for (std::size_t f = 0; f < flocks_.size(); ++f) {
        const Watched& watched = flocks_[f];
        const Drift strays = drift(f, strayed);
        work.reach = std::max(work.reach, strays.reach);
        if (!strays.strays)
            continue;
        for (std::size_t i = 0; i < watched.corners.size(); ++i) {
            const Index corner = watched.corners[i];
            if (work.slants.skips[corner] < 0 || !watched.may_change(i, strays))
                continue;
            work.unsure[corner] |= Hiders{1} << f;
            work.unsure_of[f].push_back(corner);
        }
    }
}

void NearLook::ask_corners_of(std::size_t flock, bool hid, Work& work,
                              const StrayedFlock& strayed) const
{
    const Hiders bit = Hiders{1} << flock;
    std::vector<RayStart> starts;
    std::vector<Index> who;
    for (const Index corner : work.unsure_of[flock]) {
        if (work.hiders[corner] != 0 || ((hiders_[corner] & bit) != 0) != hid)
            continue;
        who.push_back(corner);
        starts.push_back(start_at(lattice_.points[corner], work.slants.skips[corner]));
    }
    const auto hidden = occluded_by(flocks_[flock].before, strayed, work.toward, starts);
    for (std::size_t i = 0; i < who.size(); ++i)
        (hidden[i] != 0 ? work.hiders : work.unsure)[who[i]] ^= bit;
}

std::vector<NearLook::RimOnEdge> NearLook::edges_with_rims(const Work& work) const
{
    std::vector<RimOnEdge> rims;
    std::vector<bool> known(lattice_.edges.size());
    for (std::size_t c = 0; c < work.cells; ++c) {
        const NearLattice::Cell& cell = lattice_.cells[c];
        const auto [p, q, r] = cell.corners;
        const bool alike =
            work.is_hidden(p) == work.is_hidden(q) && work.is_hidden(q) == work.is_hidden(r);
        if (alike || work.slants.cosines[cell.facet] <= 0)
            continue;
        for (const Index e : cell.edges) {
            const auto [a, b] = lattice_.edges[e];
            if (work.is_hidden(a) == work.is_hidden(b) || known[e])
                continue;
            known[e] = true;
            rims.push_back({e, work.search == RimSearch::quick ? rounds_[e] : close_rounds,
                            std::max(work.slants.skips[a], work.slants.skips[b]),
                            work.hiders[a] | work.hiders[b]});
        }
    }
    return rims;
}

void NearLook::find_rims(Work& work, const StrayedBodies& strayed) const
{
    std::vector<RimOnEdge> rims = edges_with_rims(work);
    std::vector<RimOnEdge*> open(rims.size());
    for (std::size_t i = 0; i < rims.size(); ++i)
        open[i] = &rims[i];
    for (int round = 0; !open.empty(); ++round) {
        for (RimOnEdge* rim : open)
            rim->hidden = false;
        ask_middles(open, work, strayed);
        for (RimOnEdge* rim : open) {
            const double at = rim->middle();
            const bool as_first = rim->hidden == work.is_hidden(lattice_.edges[rim->edge][0]);
            (as_first ? rim->from : rim->to) = at;
        }
        std::erase_if(open, [&](const RimOnEdge* rim) { return round + 1 >= rim->rounds; });
    }
    work.crossings.assign(lattice_.edges.size(), none);
    for (const RimOnEdge& rim : rims)
        work.crossings[rim.edge] = static_cast<float>(rim.middle());
}

void NearLook::ask_middles(const std::vector<RimOnEdge*>& rims, const Work& work,
                           const StrayedBodies& strayed) const
{
    std::vector<RayStart> starts;
    std::vector<RimOnEdge*> who;
    Hiders any = 0;
    for (const RimOnEdge* rim : rims)
        any |= rim->hiders;
    for (; any != 0; any &= any - 1) {
        const auto flock = static_cast<std::size_t>(std::countr_zero(any));
        starts.clear();
        who.clear();
        for (RimOnEdge* rim : rims) {
            if ((rim->hiders >> flock & 1U) == 0 || rim->hidden)
                continue;
            const auto [a, b] = lattice_.edges[rim->edge];
            const double along = rim->middle();
            who.push_back(rim);
            starts.push_back(
                start_at(lattice_.points[a] * (1 - along) + lattice_.points[b] * along, rim->skip));
        }
        const auto answers =
            occluded_by(flocks_[flock].before, strayed.flocks[flock], work.toward, starts);
        for (std::size_t i = 0; i < who.size(); ++i)
            who[i]->hidden = answers[i] != 0;
    }
}

double NearLook::seen_mm2(const Work& work, const NearLattice::Cell& cell) const
{
    const double cosine = work.slants.cosines[cell.facet];
    if (cosine <= 0)
        return 0;
    const double area = cell.area_mm2 * cosine;
    const std::array hidden = {work.is_hidden(cell.corners[0]), work.is_hidden(cell.corners[1]),
                               work.is_hidden(cell.corners[2])};
    if (hidden[0] == hidden[1] && hidden[1] == hidden[2])
        return hidden[0] ? 0 : area;
    // The rim is taken as straight between its crossings: it cuts off the odd corner.
    const std::size_t odd = hidden[1] == hidden[2] ? 0 : hidden[0] == hidden[2] ? 1 : 2;
    const auto away_from_odd = [&](Index edge) {
        const double along = work.crossings[edge];
        return lattice_.edges[edge][0] == cell.corners[odd] ? along : 1 - along;
    };
    const double share = away_from_odd(cell.edges[odd]) * away_from_odd(cell.edges[(odd + 2) % 3]);
    return area * (hidden[odd] ? 1 - share : share);
}

} // namespace glim
