#include "remedy/wanted_depth.h"

#include "machine/stop.h"
#include "remedy/refine_surface.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace glim {

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr double last_node = PushLine::nodes - 1;

std::size_t clamped_node(double place)
{
    return static_cast<std::size_t>(std::clamp(std::round(place), 0.0, last_node));
}

/// Between two nodes where both know it, else the nearer one's.
double top_at(const PushLine& line, double place, std::size_t row)
{
    const double at = std::clamp(place, 0.0, last_node);
    const std::size_t i = std::min(static_cast<std::size_t>(at), PushLine::nodes - 2);
    const double s = at - static_cast<double>(i);
    const double a = line.top[PushLine::entry(i, row)];
    const double b = line.top[PushLine::entry(i + 1, row)];
    return std::isfinite(a) && std::isfinite(b) ? a + s * (b - a) : (s < 0.5 ? a : b);
}

double deepest_between(const DepthAsked& asked, std::uint32_t first, std::uint32_t last)
{
    return *std::max_element(asked.depth_mm.begin() + first, asked.depth_mm.begin() + last + 1);
}

/// What a line has to know of a facet: where it lies, at most.
struct FacetReach {
    double u_least = infinite, u_most = -infinite, y_most = -infinite, w_most = -infinite;
};

std::optional<AskedOfPoint> asked_of_place(const PushLine& line, const SeenPlace& p,
                                           double margin_mm)
{
    const double place = line.place_of(p.u);
    const double margin = margin_mm / line.step;
    if (place < -margin || place > last_node + margin)
        return std::nullopt;
    const std::size_t node = clamped_node(place);
    const std::optional<std::size_t> entry = line.entry_before(node, p.w);
    if (!entry)
        return std::nullopt;
    const double top = top_at(line, place, *entry % PushLine::rows);
    if (!std::isfinite(top))
        return std::nullopt;
    const double most = (p.y - line.low[*entry]) / line.axes.share;
    if (most <= 0)
        return std::nullopt;
    // Nothing stands above its own top line: what seems to, between nodes or beside them, sinks as
    // the highest does.
    return AskedOfPoint{std::min(0.0, (p.y - top) / line.axes.share), most,
                        PushLine::column_of(place - margin), PushLine::column_of(place + margin),
                        PushLine::column_of(place)};
}

/// The standing patches of one patch that a line's pusher moves.
std::vector<const StandingPatch*> stands_in(const ReliefGround& ground, const DepthAsked& asked,
                                            const PushLine& line, std::size_t patch)
{
    std::vector<const StandingPatch*> found;
    for (const StandingPatch* s : ground.eyes()[asked.eye].pushers[line.pusher].patches)
        if (s->patch == patch)
            found.push_back(s);
    return found;
}

/// One line's ask of one patch, as it stands there once.
class Asker {
public:
    Asker(const DepthAsked& asked, std::size_t line, const StandingPatch& standing);

    bool asks(const std::array<Point, 3>& corners) const;
    double wanted(const Point& point, double margin_mm) const;

private:
    const PushLine& line() const { return asked_.lines[which_]; }
    double depth_at(std::size_t node) const
    {
        return which_ == 0 ? asked_.depth_mm[PushLine::column_of(static_cast<double>(node))]
                           : deepest_;
    }
    SeenPlace place_of(const Point& point) const
    {
        return {across_.dot(point) + zero_.u, up_.dot(point) + zero_.y,
                before_.dot(point) + zero_.w};
    }
    FacetReach reach_of(const std::array<Point, 3>& corners) const;
    void set_least();

    const DepthAsked& asked_;
    std::size_t which_;
    double deepest_;
    Vector across_, up_, before_; ///< the line's axes in the patch's own frame
    SeenPlace zero_;              ///< of that frame
    /// Nothing is asked of what lies lower or less far before.
    double y_least_ = infinite, w_least_ = infinite;
};

Asker::Asker(const DepthAsked& asked, std::size_t line, const StandingPatch& standing)
    : asked_(asked), which_(line), deepest_(asked.deepest_mm())
{
    const PushAxes& axes = asked.lines[line].axes;
    const Eigen::Matrix3d back = standing.where.matrix().linear().transpose();
    across_ = back * axes.across;
    up_ = back * axes.up;
    before_ = back * axes.before;
    zero_ = seen_place(axes, standing.where(Point::Zero()));
    set_least();
}

void Asker::set_least()
{
    for (std::size_t i = 0; i < PushLine::nodes; ++i) {
        const double depth = depth_at(i);
        for (std::size_t row = 0; row < PushLine::rows && depth > 0; ++row) {
            const std::size_t entry = PushLine::entry(i, row);
            w_least_ = std::min(w_least_, line().from[entry]);
            if (std::isfinite(line().top[entry]))
                y_least_ =
                    std::min(y_least_, std::max(line().top[entry] - depth * line().axes.share,
                                                line().low[entry]));
        }
    }
}

FacetReach Asker::reach_of(const std::array<Point, 3>& corners) const
{
    FacetReach reach;
    for (const Point& corner : corners) {
        const SeenPlace p = place_of(corner);
        reach.u_least = std::min(reach.u_least, p.u);
        reach.u_most = std::max(reach.u_most, p.u);
        reach.y_most = std::max(reach.y_most, p.y);
        reach.w_most = std::max(reach.w_most, p.w);
    }
    return reach;
}

bool Asker::asks(const std::array<Point, 3>& corners) const
{
    const FacetReach reach = reach_of(corners);
    const double first = line().place_of(reach.u_least);
    const double last = line().place_of(reach.u_most);
    if (last < 0 || first > last_node || reach.y_most <= y_least_ || reach.w_most <= w_least_)
        return false;
    const std::size_t end = clamped_node(last + 1);
    for (std::size_t i = clamped_node(first - 1); i <= end; ++i) {
        const double depth = depth_at(i);
        const std::optional<std::size_t> entry = line().entry_before(i, reach.w_most);
        if (depth <= 0 || !entry || !std::isfinite(line().top[*entry]))
            continue;
        if (reach.y_most >
            std::max(line().top[*entry] - depth * line().axes.share, line().low[*entry]))
            return true;
    }
    return false;
}

double Asker::wanted(const Point& point, double margin_mm) const
{
    if (up_.dot(point) + zero_.y <= y_least_)
        return 0;
    const auto of = asked_of_place(line(), place_of(point), margin_mm);
    if (!of)
        return 0;
    const double depth = which_ == 0 ? deepest_between(asked_, of->first, of->last) : deepest_;
    return depth <= 0 ? 0 : std::clamp(of->base_mm + depth, 0.0, of->most_mm);
}

std::vector<Asker> askers_of(const ReliefGround& ground, std::size_t patch,
                             const std::vector<DepthAsked>& asked)
{
    std::vector<Asker> askers;
    for (const DepthAsked& each : asked) {
        if (each.deepest_mm() <= 0)
            continue;
        for (std::size_t l = 0; l < each.lines.size(); ++l)
            for (const StandingPatch* s : stands_in(ground, each, each.lines[l], patch))
                askers.emplace_back(each, l, *s);
    }
    return askers;
}

} // namespace

double DepthAsked::deepest_mm() const
{
    return depth_mm.empty() ? 0 : *std::max_element(depth_mm.begin(), depth_mm.end());
}

std::optional<AskedOfPoint> asked_of_point(const PushLine& line, const Point& scene_point,
                                           double margin_mm)
{
    return asked_of_place(line, seen_place(line.axes, scene_point), margin_mm);
}

std::vector<double> wanted_depths(const PatchOfGround& patch, const std::vector<Point>& points,
                                  const std::vector<DepthAsked>& asked, double margin_mm,
                                  const Workers& workers)
{
    const std::vector<Asker> askers = askers_of(patch.ground, patch.place, asked);
    std::vector<double> depths(points.size(), 0);
    const Workers silent = workers.silent();
    const bool whole = for_each_index(points.size(), silent, [&](std::size_t i, unsigned) {
        for (const Asker& asker : askers)
            depths[i] = std::max(depths[i], asker.wanted(points[i], margin_mm));
    });
    if (!whole)
        throw Stopped();
    return depths;
}

std::vector<std::uint8_t> asked_facets(const PatchOfGround& patch, const TriangleMesh& mesh,
                                       const std::vector<DepthAsked>& asked, double longest_mm,
                                       const Workers& workers)
{
    const std::vector<Asker> askers = askers_of(patch.ground, patch.place, asked);
    const Direction& push = patch.ground.patches()[patch.place].push;
    std::vector<std::uint8_t> marked(mesh.facets.size(), 0);
    const Workers silent = workers.silent();
    const bool whole = for_each_index(mesh.facets.size(), silent, [&](std::size_t f, unsigned) {
        if (longest_edge(mesh, f, push) <= longest_mm)
            return;
        const std::array<Point, 3> corners = {mesh.corner(f, 0), mesh.corner(f, 1),
                                              mesh.corner(f, 2)};
        marked[f] = static_cast<std::uint8_t>(std::any_of(
            askers.begin(), askers.end(), [&](const Asker& asker) { return asker.asks(corners); }));
    });
    if (!whole)
        throw Stopped();
    return marked;
}

} // namespace glim
