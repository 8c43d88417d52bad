#include "remedy/prism_body.h"

#include "geometry/edge_uses.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <map>
#include <vector>

namespace glim {

namespace {

/// Gives every fan of triangles around a point its own copy of it: facets whose corner there is
/// joined by common edges share one.
class FanCorners {
public:
    explicit FanCorners(const TriangleMesh& plan) : plan_(plan)
    {
        for (std::size_t place = 0; place < 3 * plan.facets.size(); ++place)
            root_.push_back(place);
        const std::vector<EdgeUse> uses = edge_uses(plan);
        for (std::size_t i = 0; i + 1 < uses.size(); ++i)
            if (uses[i].same_edge(uses[i + 1]))
                for (const std::uint32_t end : {uses[i].from, uses[i].to})
                    join(place_of(uses[i].facet, end), place_of(uses[i + 1].facet, end));
    }

    /// One a facet's corner.
    std::size_t corner(std::size_t facet, std::size_t i) { return find(3 * facet + i); }
    std::size_t corner_at(std::uint32_t facet, std::uint32_t point)
    {
        return find(place_of(facet, point));
    }

private:
    std::size_t place_of(std::uint32_t facet, std::uint32_t point) const
    {
        const Facet& f = plan_.facets[facet];
        return std::size_t{3} * facet +
               static_cast<std::size_t>(std::find(f.begin(), f.end(), point) - f.begin());
    }
    std::size_t find(std::size_t place)
    {
        while (root_[place] != place)
            place = root_[place] = root_[root_[place]];
        return place;
    }
    void join(std::size_t a, std::size_t b)
    {
        a = find(a);
        b = find(b);
        root_[std::max(a, b)] = std::min(a, b);
    }

    const TriangleMesh& plan_;
    std::vector<std::size_t> root_;
};

} // namespace

TriangleMesh closed_mesh(const PrismBody& body)
{
    const TriangleMesh& plan = body.plan;
    FanCorners fans(plan);
    TriangleMesh mesh;
    std::map<std::size_t, std::uint32_t> known; // the lower point; the upper one comes next
    const auto lower = [&](std::size_t fan) {
        const auto [entry, is_new] = known.try_emplace(fan, mesh.points.size());
        if (is_new) {
            const std::uint32_t p = plan.facets[fan / 3][fan % 3];
            const double bottom = body.bottom_mm[p];
            const double top = std::max(body.top_mm[p], bottom + in_mm(least_height));
            mesh.points.emplace_back(plan.points[p].x(), plan.points[p].y(), bottom);
            mesh.points.emplace_back(plan.points[p].x(), plan.points[p].y(), top);
        }
        return entry->second;
    };
    for (std::size_t f = 0; f < plan.facets.size(); ++f) {
        const std::uint32_t a = lower(fans.corner(f, 0));
        const std::uint32_t b = lower(fans.corner(f, 1));
        const std::uint32_t c = lower(fans.corner(f, 2));
        mesh.facets.push_back({a + 1, b + 1, c + 1});
        mesh.facets.push_back({a, c, b});
    }
    const std::vector<EdgeUse> uses = edge_uses(plan);
    for (std::size_t i = 0; i < uses.size(); ++i) {
        const bool shared = (i > 0 && uses[i].same_edge(uses[i - 1])) ||
                            (i + 1 < uses.size() && uses[i].same_edge(uses[i + 1]));
        if (shared)
            continue;
        std::uint32_t from = lower(fans.corner_at(uses[i].facet, uses[i].from));
        std::uint32_t to = lower(fans.corner_at(uses[i].facet, uses[i].to));
        if (!uses[i].forward)
            std::swap(from, to);
        mesh.facets.push_back({from, to, to + 1});
        mesh.facets.push_back({from, to + 1, from + 1});
    }
    return mesh;
}

Volume enclosed_volume(const TriangleMesh& mesh)
{
    if (mesh.points.empty())
        return {};
    const Point about = mesh.points.front();
    double six_times = 0;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        six_times += (mesh.corner(f, 0) - about)
                         .dot((mesh.corner(f, 1) - about).cross(mesh.corner(f, 2) - about));
    return cubic_millimetres(six_times / 6);
}

} // namespace glim
