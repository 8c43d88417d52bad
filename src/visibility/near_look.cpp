#include "visibility/near_look.h"

#include "geometry/box_tree.h"
#include "units/trig.h"
#include "visibility/lit_look.h"
#include "visibility/touch.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace glim {

namespace {

/// Rims are found to about this along an edge: what it shifts an area by averages out over edges.
constexpr double rim_grain_mm = 0.1;
constexpr int least_rounds = 3, most_rounds = 7;

constexpr float none = -1;

using Hidden = LitLook::Hidden;

/// Whatever faces the eye on one side of an edge alone lies on the outline.
std::vector<Point> outline_points(const LitLook& look)
{
    const LitLattice& lattice = look.lattice();
    std::vector<int> facing(lattice.edges().size());
    for (const LitLattice::Cell& cell : lattice.cells())
        for (const LitLattice::Index e : cell.edges)
            facing[e] += look.faces(cell) ? 1 : 0;
    std::vector<Point> points;
    for (std::size_t e = 0; e < facing.size(); ++e)
        if (facing[e] == 1)
            for (const LitLattice::Index v : lattice.edges()[e].ends)
                points.push_back(lattice.vertices()[v]);
    return points;
}

/// Middles of edges across which a rim runs.
void add_rim_points(const LitLook& look, const Hidden& hidden, std::vector<Point>& points)
{
    const LitLattice& lattice = look.lattice();
    for (const LitLattice::Edge& edge : lattice.edges()) {
        const auto [a, b] = edge.ends;
        if (hidden[a] != hidden[b] && look.skip(a) >= 0 && look.skip(b) >= 0)
            points.push_back((lattice.vertices()[a] + lattice.vertices()[b]) / 2);
    }
}

/// Corners before or behind which something stands so near that it may change sides.
void add_touched_points(const LitLook& look, const Caster& strangers, Length reach,
                        std::vector<Point>& points)
{
    LitLook::FrontCorners corners = look.front_corners();
    const Eigen::Vector3f d = look.toward().vector().cast<float>();
    const auto back = static_cast<float>(in_mm(reach));
    for (RayStart& start : corners.starts) {
        const float by = start.skip - back;
        start = {start.x + by * d.x(), start.y + by * d.y(), start.z + by * d.z(), 0};
    }
    const Hidden touched = strangers.occluded(look.toward(), corners.starts, 2 * reach);
    for (std::size_t i = 0; i < touched.size(); ++i)
        if (touched[i] != 0)
            points.push_back(look.lattice().vertices()[corners.vertices[i]]);
}

/// Who lies within a radius of any of some points, as the eye sees them.
class Neighbourhood {
public:
    Neighbourhood(const std::vector<Point>& points, const ViewPlane& plane, Length radius)
        : plane_(plane), squared_(in_mm(radius) * in_mm(radius)), tree_(boxes(points, plane))
    {
    }

    bool holds(const Point& p) const
    {
        const Point2 at = plane_.project(p);
        double squared_reach = squared_;
        tree_.visit(BoxTree<2>::BoxAround(at), squared_reach, [&](std::size_t i) {
            if ((places_[i] - at).squaredNorm() <= squared_)
                squared_reach = -1; // nobody else is needed
        });
        return squared_reach < 0;
    }

private:
    std::vector<BoxTree<2>::BoxAround> boxes(const std::vector<Point>& points,
                                             const ViewPlane& plane)
    {
        std::vector<BoxTree<2>::BoxAround> all;
        for (const Point& p : points) {
            places_.push_back(plane.project(p));
            all.emplace_back(places_.back());
        }
        return all;
    }

    ViewPlane plane_;
    double squared_;
    std::vector<Point2> places_;
    BoxTree<2> tree_;
};

std::vector<bool> corners_to_ask(const NearLook::Prepared& lamp, const Direction& toward,
                                 const Nearby& nearby)
{
    const LitLook fine(lamp.fine, toward);
    std::vector<Point> doubtful = outline_points(fine);
    add_rim_points(fine, fine.hidden_by(lamp.fine.all), doubtful);
    add_touched_points(fine, lamp.strangers, nearby.reach, doubtful);
    // Corners and rims lie within two of the fine lattice's cells of what stands for them.
    const Neighbourhood near(doubtful, ViewPlane(toward),
                             nearby.reach + 2 * lamp.fine.lattice.pitch());
    std::vector<bool> ask;
    for (const Point& p : lamp.coarse.lattice.vertices())
        ask.push_back(near.holds(p));
    return ask;
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

RayStart start_at(const Point& p, float skip)
{
    return {static_cast<float>(p.x()), static_cast<float>(p.y()), static_cast<float>(p.z()), skip};
}

} // namespace

NearLook::NearLook(const Prepared& lamp, const Direction& toward, const Nearby& nearby)
    : drawn_toward_(toward), touch_(lamp.coarse.touch), rounds_(rounds_for(lamp.coarse.lattice))
{
    const LitLook coarse(lamp.coarse, toward);
    const std::vector<bool> ask = corners_to_ask(lamp, toward, nearby);
    keep_cells(lamp.coarse, ask, coarse.hidden_by(lamp.coarse.all), sin(nearby.turn));
}

void NearLook::keep_cells(const LampView& view, const std::vector<bool>& ask, const Hidden& hidden,
                          double doubtful_cosine)
{
    const LitLattice& lattice = view.lattice;
    std::vector<const LitLattice::Cell*> kept;
    for (const LitLattice::Cell& cell : lattice.cells()) {
        const Vector& normal = lattice.facets()[cell.facet].normal;
        const double cosine = drawn_toward_.dot(normal);
        if (cosine <= -doubtful_cosine || normal.isZero())
            continue;
        const auto& [a, b, c] = cell.corners;
        if (cosine <= doubtful_cosine || ask[a] || ask[b] || ask[c] || hidden[a] != hidden[b] ||
            hidden[b] != hidden[c])
            kept.push_back(&cell);
        else if (hidden[a] == 0)
            lit_for_sure_ += cell.area_mm2 * normal;
    }
    Renumbering corners, edges, facets;
    for (const bool asked_ones : {true, false})
        for (const LitLattice::Cell* cell : kept)
            for (const Index v : cell->corners)
                if (ask[v] == asked_ones)
                    corners(v);
    for (const LitLattice::Cell* cell : kept) {
        Cell c{{}, {}, facets(cell->facet), cell->area_mm2};
        for (int i = 0; i < 3; ++i) {
            c.corners[i] = corners(cell->corners[i]);
            c.edges[i] = edges(cell->edges[i]);
        }
        cells_.push_back(c);
    }
    for (const Index e : edges.order())
        edges_.push_back(
            {{corners(lattice.edges()[e].ends[0]), corners(lattice.edges()[e].ends[1])}});
    for (const Index v : corners.order()) {
        points_.push_back(lattice.vertices()[v]);
        hidden_.push_back(hidden[v]);
        if (!ask[v])
            continue;
        asked_.push_back({static_cast<Index>(facets_at_.size()), 0});
        for (const Index f : lattice.facets_at(v))
            facets_at_.push_back(facets(f));
        asked_.back().facets = static_cast<Index>(facets_at_.size()) - asked_.back().first_facet;
    }
    for (const Index f : facets.order())
        normals_.push_back(lattice.facets()[f].normal);
}

struct NearLook::Work {
    std::vector<double> cosines; ///< one a facet
    std::vector<float> skips;    ///< one a corner that is asked; below 0: faces away
    Hidden hidden;
    std::vector<float> crossings; ///< one an edge
};

/// By the most slanted facet there that faces the eye, as LitLook has it.
float NearLook::skip_at(const Asked& corner, const std::vector<double>& cosines) const
{
    float longest = none;
    for (Index f = 0; f < corner.facets; ++f)
        if (const double cosine = cosines[facets_at_[corner.first_facet + f]]; cosine > 0)
            longest = std::max(longest, static_cast<float>(in_mm(skip_along_ray(touch_, cosine))));
    return longest;
}

void NearLook::ask_corners(Work& work, const Direction& toward, const Caster& obstacles) const
{
    work.hidden = hidden_;
    std::vector<RayStart> starts;
    std::vector<Index> who;
    for (Index v = 0; v < asked_.size(); ++v) {
        work.skips.push_back(skip_at(asked_[v], work.cosines));
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

Area NearLook::visible(const Direction& toward, const Caster& obstacles) const
{
    Work work;
    work.cosines.reserve(normals_.size());
    for (const Vector& normal : normals_)
        work.cosines.push_back(toward.dot(normal));
    ask_corners(work, toward, obstacles);
    find_rims(work, toward, obstacles);
    double seen = std::max(0.0, toward.dot(lit_for_sure_));
    for (const Cell& cell : cells_)
        seen += seen_mm2(work, cell);
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
    const auto skip_of = [&](Index v) { return v < asked_.size() ? work.skips[v] : none; };
    for (const Cell& cell : cells_) {
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
    for (int round = 0; round < rounds_; ++round) {
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
