#include "remedy/keep_clear_body.h"

#include "geometry/triangulate.h"
#include "machine/stop.h"
#include "remedy/prism_body.h"
#include "remedy/refine_surface.h"
#include "units/trig.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace glim {

namespace {

/// More than any surfacing program likes to load.
constexpr std::size_t most_cells = 120'000;
/// Cells are not halved below this share of the chord error: over so small a cell nothing is
/// farther from the set than its neighbours are.
constexpr double least_cell = 0.1;
/// The plan is grown by this share of the chord error, which makes its outline simpler.
constexpr double plan_growth_share = 0.1;
/// Only where a cell is as small as this, as a multiple of the chord error, is it worth while to
/// look for the set beside a place: larger ones are halved on the first sight.
constexpr double around_size = 3;
/// Places around one at which the set is looked for, as shares of the chord error.
constexpr std::array ring_radii = {0.5, 0.9};
constexpr int ring_places = 8;

/// Cuts the plan finer and finer.
class PlanCutter {
public:
    PlanCutter(const KeepClearSet& set, double chord_error, const Workers& workers)
        : set_(set), chord_(chord_error), workers_(workers)
    {
    }

    void begin(const std::vector<std::vector<Point2>>& outlines);
    void refine();
    PrismBody prism() const;
    bool fits() const { return fits_; }

private:
    struct Cell {
        CellSpan span;
        bool known = false;
        bool good = false;
    };
    void measure();
    void set_corners();
    std::vector<std::uint8_t> misfits();
    void mark_around(const std::vector<std::uint8_t>& left, std::vector<std::uint8_t>& marked);
    bool fits(std::size_t cell) const;
    bool fits_at(const Point2& place, double bottom, double top, bool look_around) const;
    PlaneTriangle triangle(std::size_t cell) const;
    double size_of(std::size_t cell) const;

    const KeepClearSet& set_;
    double chord_;
    Workers workers_;
    TriangleMesh plan_; ///< z = 0
    std::vector<Cell> cells_;
    std::vector<double> top_, bottom_; ///< over the plan's points
    bool fits_ = true;
};

void PlanCutter::begin(const std::vector<std::vector<Point2>>& outlines)
{
    for (const std::vector<Point2>& outline : outlines) {
        std::vector<Point> corners;
        corners.reserve(outline.size());
        for (const Point2& p : outline)
            corners.emplace_back(p.x(), p.y(), 0);
        const auto first = static_cast<std::uint32_t>(plan_.points.size());
        const std::optional<std::vector<Facet>> facets = triangulated(corners);
        for (const Facet& f : facets.value_or(fan_of(corners.size())))
            plan_.facets.push_back({first + f[0], first + f[1], first + f[2]});
        plan_.points.insert(plan_.points.end(), corners.begin(), corners.end());
    }
    cells_.resize(plan_.facets.size());
}

PlaneTriangle PlanCutter::triangle(std::size_t cell) const
{
    return {plan_.corner(cell, 0).head<2>(), plan_.corner(cell, 1).head<2>(),
            plan_.corner(cell, 2).head<2>()};
}

double PlanCutter::size_of(std::size_t cell) const
{
    double size = 0;
    for (int i = 0; i < 3; ++i)
        size = std::max(size, (plan_.corner(cell, i) - plan_.corner(cell, (i + 1) % 3)).norm());
    return size;
}

/// Looks over the cells that are new.
void PlanCutter::measure()
{
    std::vector<std::size_t> fresh;
    for (std::size_t c = 0; c < cells_.size(); ++c)
        if (!cells_[c].known)
            fresh.push_back(c);
    const bool done = for_each_index(fresh.size(), workers_.silent(), [&](std::size_t i, unsigned) {
        cells_[fresh[i]].span = set_.over(triangle(fresh[i]));
        cells_[fresh[i]].known = true;
    });
    if (!done)
        throw Stopped();
}

void PlanCutter::set_corners()
{
    constexpr double endless = std::numeric_limits<double>::infinity();
    top_.assign(plan_.points.size(), -endless);
    bottom_.assign(plan_.points.size(), endless);
    for (std::size_t c = 0; c < cells_.size(); ++c)
        for (std::size_t j = 0; cells_[c].span.any && j < 3; ++j) {
            const std::uint32_t p = plan_.facets[c][j];
            top_[p] = std::max(top_[p], cells_[c].span.top[j]);
            bottom_[p] = std::min(bottom_[p], cells_[c].span.bottom[j]);
        }
}

/// Whether both heights over a place lie near the set: straight above or below it, or beside.
bool PlanCutter::fits_at(const Point2& place, double bottom, double top, bool look_around) const
{
    bool top_fits = false, bottom_fits = false;
    const auto look = [&](const Point2& at, double aside) {
        const std::optional<HeightSpan> column = set_.column(at);
        if (!column)
            return;
        const auto near = [&](double height) {
            const double off =
                std::max({0.0, height - in_mm(column->top), in_mm(column->bottom) - height});
            return std::hypot(off, aside) <= chord_;
        };
        top_fits = top_fits || near(top);
        bottom_fits = bottom_fits || near(bottom);
    };
    look(place, 0);
    for (const double share : ring_radii)
        for (int i = 0; look_around && i < ring_places && !(top_fits && bottom_fits); ++i) {
            const Angle around = degrees(360.0 * i / ring_places);
            const double radius = share * chord_;
            look(place + radius * Point2(cos(around), sin(around)), radius);
        }
    const auto is_near = [&](double height) {
        return look_around && set_.is_near({place.x(), place.y(), height}, chord_);
    };
    return (top_fits || is_near(top)) && (bottom_fits || is_near(bottom));
}

bool PlanCutter::fits(std::size_t c) const
{
    const Facet& cell = plan_.facets[c];
    const bool is_small = size_of(c) < around_size * chord_;
    constexpr std::array<std::array<double, 3>, 7> places = {{{1. / 3, 1. / 3, 1. / 3},
                                                              {0, 0.5, 0.5},
                                                              {0.5, 0, 0.5},
                                                              {0.5, 0.5, 0},
                                                              {1, 0, 0},
                                                              {0, 1, 0},
                                                              {0, 0, 1}}};
    return std::all_of(places.begin(), places.end(), [&](const std::array<double, 3>& share) {
        Point2 place = Point2::Zero();
        double bottom = 0, top = 0;
        for (std::size_t j = 0; j < 3; ++j) {
            place += share[j] * plan_.points[cell[j]].head<2>();
            bottom += share[j] * bottom_[cell[j]];
            top += share[j] * top_[cell[j]];
        }
        return fits_at(place, bottom, top, is_small);
    });
}

/// A byte a cell: 1 where it lies too far from the set and may be halved. A cell once found good
/// stays good: heights over its corners only come nearer to the set as its neighbours are halved.
std::vector<std::uint8_t> PlanCutter::misfits()
{
    std::vector<std::uint8_t> marked(cells_.size(), 0);
    std::vector<std::uint8_t> left(cells_.size(), 0);
    const bool done =
        for_each_index(cells_.size(), workers_.silent(), [&](std::size_t c, unsigned) {
            if (!cells_[c].span.any || cells_[c].good)
                return;
            cells_[c].good = fits(c);
            if (cells_[c].good)
                return;
            (size_of(c) > least_cell * chord_ ? marked : left)[c] = 1;
        });
    if (!done)
        throw Stopped();
    fits_ = std::find(left.begin(), left.end(), 1) == left.end();
    mark_around(left, marked);
    return marked;
}

/// A cell that is as small as cells get takes too large heights from larger ones that share a
/// corner with it: these may be halved.
void PlanCutter::mark_around(const std::vector<std::uint8_t>& left,
                             std::vector<std::uint8_t>& marked)
{
    std::vector<std::uint8_t> is_left(plan_.points.size(), 0);
    for (std::size_t c = 0; c < cells_.size(); ++c)
        for (const std::uint32_t p : plan_.facets[c])
            is_left[p] |= left[c];
    for (std::size_t c = 0; c < cells_.size(); ++c) {
        const Facet& cell = plan_.facets[c];
        if (cells_[c].span.any && size_of(c) > least_cell * chord_ &&
            std::any_of(cell.begin(), cell.end(), [&](auto p) { return is_left[p] != 0; }))
            marked[c] = 1;
    }
}

void PlanCutter::refine()
{
    for (;;) {
        measure();
        set_corners();
        const std::vector<std::uint8_t> marked = misfits();
        if (std::find(marked.begin(), marked.end(), 1) == marked.end())
            return;
        if (cells_.size() > most_cells) {
            fits_ = false;
            return;
        }
        NumberedMesh numbered{plan_, std::vector<std::uint32_t>(plan_.facets.size())};
        for (std::uint32_t c = 0; c < numbered.of.size(); ++c)
            numbered.of[c] = c;
        NumberedMesh halved = with_halved_edges(numbered, marked, Direction::z());
        std::vector<Cell> cells(halved.of.size());
        for (std::size_t c = 0; c < cells.size(); ++c)
            if (halved.mesh.facets[c] == plan_.facets[halved.of[c]])
                cells[c] = cells_[halved.of[c]];
        plan_ = std::move(halved.mesh);
        cells_ = std::move(cells);
    }
}

PrismBody PlanCutter::prism() const
{
    PrismBody prism;
    prism.plan.points = plan_.points;
    for (std::size_t c = 0; c < cells_.size(); ++c)
        if (cells_[c].span.any)
            prism.plan.facets.push_back(plan_.facets[c]);
    prism.top_mm = top_;
    prism.bottom_mm = bottom_;
    return prism;
}

} // namespace

KeepClearBody keep_clear_body(const KeepClearSet& set, const ConvexPolygon& within,
                              Length chord_error, const Workers& workers)
{
    PlanCutter cutter(set, in_mm(chord_error), workers);
    cutter.begin(set.plan(within, plan_growth_share * chord_error));
    cutter.refine();
    KeepClearBody body;
    body.mesh = closed_mesh(cutter.prism());
    body.volume = enclosed_volume(body.mesh);
    if (cutter.fits())
        body.within = chord_error;
    return body;
}

} // namespace glim
