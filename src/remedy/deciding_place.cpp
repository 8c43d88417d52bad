#include "remedy/deciding_place.h"

#include "remedy/wanted_depth.h"
#include "visibility/lit_look.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// A facet that leans less than this against the others' side still counts as across its push.
constexpr double folded_sine = 1e-6;

/// The node across at which the line's pusher stands highest over what has to be freed with this
/// depth: of those that need all of it, the middle one.
std::size_t deciding_node(const PushLine& line, double depth_mm)
{
    std::vector<std::size_t> need_all;
    std::size_t neediest = 0;
    double most = -no_depth;
    for (std::size_t i = 0; i < PushLine::nodes; ++i) {
        const std::size_t whole = PushLine::entry(i);
        const double need = (line.top[whole] - line.low[whole]) / line.axes.share;
        if (!std::isfinite(need))
            continue;
        if (need >= depth_mm)
            need_all.push_back(i);
        if (need > most) {
            most = need;
            neediest = i;
        }
    }
    return need_all.empty() ? neediest : need_all[need_all.size() / 2];
}

struct Highest {
    double y = -no_depth;
    Point place = Point::Zero(); ///< scene frame
    const StandingPatch* patch = nullptr;
    std::size_t facet = 0;
};

/// A place across a line's view, and the node there.
struct LineColumn {
    const PushLine& line;
    double u;
    std::size_t node;
};

/// Raises `highest` to where an edge crosses `u` before the lit face.
void look_at_edge(const StandingPatch& patch, const PatchEdge& edge, const LineColumn& column,
                  Highest& highest)
{
    const Point& from = patch.points[edge.from];
    const Point& to = patch.points[edge.to];
    const double a = column.line.axes.across.dot(from) - column.u;
    const double b = column.line.axes.across.dot(to) - column.u;
    if (a * b > 0)
        return;
    const double s = a == b ? 0.5 : a / (a - b);
    const Point place = from + s * (to - from);
    const SeenPlace seen = seen_place(column.line.axes, place);
    if (seen.y > highest.y && column.line.entry_before(column.node, seen.w))
        highest = {seen.y, place, &patch, edge.first};
}

Highest highest_at(const LampEye& eye, const PushLine& line, double depth_mm)
{
    const std::size_t node = deciding_node(line, depth_mm);
    const double u = line.u_least + line.step * static_cast<double>(node);
    Highest highest;
    for (const StandingPatch* patch : eye.pushers[line.pusher].patches)
        for (const PatchEdge& edge : patch->edges)
            look_at_edge(*patch, edge, {line, u, node}, highest);
    return highest;
}

/// Whether all facets that have to sink face the same way along the push.
bool is_height_field(const ReliefGround& ground, const DepthAsked& asked)
{
    const Workers alone{.threads = 1, .stop = {}, .progress = {}};
    for (std::size_t p = 0; p < ground.patches().size(); ++p) {
        const PushedPatch& patch = ground.patches()[p];
        const auto marked = asked_facets({ground, p}, patch.mesh, {asked}, 0, alone);
        bool with = false;
        bool against = false;
        for (std::size_t f = 0; f < marked.size(); ++f) {
            const Vector area = area_vector(patch.mesh, f);
            const double along = patch.push.dot(area);
            if (marked[f] == 0 || std::abs(along) <= folded_sine * area.norm())
                continue;
            (along > 0 ? with : against) = true;
        }
        if (with && against)
            return false;
    }
    return true;
}

} // namespace

void set_deciding_place(LeastDepth& least, const ReliefGround& ground, const ReliefDemand& demand,
                        const LampLook& look)
{
    const std::vector<std::size_t> eyes = ground.eyes_of(look);
    std::vector<SightNeeds> needs = needs_of(ground, demand, look);
    Highest highest;
    for (std::size_t i = 0; i < needs.size(); ++i) {
        if (needs[i].lines.empty())
            continue;
        const Highest here =
            highest_at(ground.eyes()[eyes[i]], needs[i].lines.front(), in_mm(least.depth));
        if (here.patch != nullptr && highest.patch == nullptr)
            highest = here;
        const DepthAsked asked{eyes[i], std::move(needs[i].lines),
                               std::vector<double>(PushLine::columns, in_mm(least.depth))};
        least.height_field = least.height_field && is_height_field(ground, asked);
    }
    if (highest.patch == nullptr)
        return;
    least.place = highest.place + ground.origin();
    const PushedPatch& patch = ground.patches()[highest.patch->patch];
    least.surface = ground.study().surfaces[patch.surfaces[patch.of[highest.facet]]].name;
}

std::string fixed_part_in_the_way(const ReliefGround& ground, const ReliefDemand& demand,
                                  const LampLook& look)
{
    std::vector<double> areas(ground.study().surfaces.size(), 0);
    for (const std::size_t e : ground.eyes_of(look)) {
        const LampEye& eye = ground.eyes()[e];
        const LitLook lit(eye.view, demand.toward);
        const LitLook::Hidden hidden = lit.hidden_by(eye.fixed);
        const std::vector<double> of_corner = lit.areas_of_mm2(hidden);
        const LitLook::FrontCorners corners = lit.front_corners(&hidden);
        const std::vector<NearestHit> hits = eye.fixed.nearest_hit(demand.toward, corners.starts);
        for (std::size_t i = 0; i < hits.size(); ++i)
            if (hits[i].any())
                areas[eye.fixed_standings[hits[i].part].surface.index] +=
                    of_corner[corners.vertices[i]];
    }
    const auto most = std::max_element(areas.begin(), areas.end());
    if (most == areas.end() || *most <= 0)
        return "";
    return ground.study()
        .surfaces[SurfaceId{static_cast<std::uint32_t>(most - areas.begin())}]
        .name;
}

} // namespace glim
