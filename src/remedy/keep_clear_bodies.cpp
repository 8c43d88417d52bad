#include "remedy/keep_clear_bodies.h"

#include "geometry/components.h"
#include "geometry/weld.h"
#include "machine/stop.h"
#include "units/trig.h"

#include <algorithm>
#include <numeric>

namespace glim {

namespace {

/// A lamp in more tiers than 2^3 is looked at as these.
constexpr int most_splits = 3;
/// Gaps close within this way from the lamp at the flattest fields.
constexpr std::array gap_distances_mm = {1.0, 4.0, 15.0, 60.0};
constexpr std::size_t most_gap_facets = 120;
constexpr int volume_grid = 90;

/// Asked of the whole lamp in the whole field: a part of it has no other gaps but smaller ones.
bool has_gap(const TriangleMesh& lit, const Field& field, const SpaceReach& reach, Length widest)
{
    const KeepClearSet set(sheaves_of(lit, whole_parts(field)), reach.levels);
    const std::size_t stride = 1 + lit.facets.size() / most_gap_facets;
    for (std::size_t f = 0; f < lit.facets.size(); f += stride) {
        const Point2 middle =
            ((lit.corner(f, 0) + lit.corner(f, 1) + lit.corner(f, 2)) / 3).head<2>();
        for (const FieldRectangle& r : field.rectangles)
            for (const double distance : gap_distances_mm) {
                const Angle h = (r.h_least + r.h_most) / 2;
                if (set.widest_gap(middle + distance * Point2(cos(h), sin(h))) > widest)
                    return true;
            }
    }
    return false;
}

/// By connected part; a lamp of one part by the height of its facets.
std::vector<TriangleMesh> split(const TriangleMesh& lit)
{
    const TriangleMesh whole = welded(lit);
    std::vector<std::uint32_t> group = components_of(whole);
    std::uint32_t count = 0;
    for (const std::uint32_t g : group)
        count = std::max(count, g + 1);
    if (count == 1) {
        std::vector<double> heights;
        for (std::size_t f = 0; f < whole.facets.size(); ++f)
            heights.push_back(whole.corner(f, 0).z() + whole.corner(f, 1).z() +
                              whole.corner(f, 2).z());
        std::vector<double> sorted = heights;
        std::sort(sorted.begin(), sorted.end());
        for (std::size_t f = 0; f < heights.size(); ++f)
            group[f] = heights[f] < sorted[sorted.size() / 2] ? 0 : 1;
        count = 2;
    }
    std::vector<std::vector<std::uint32_t>> members(count);
    for (std::uint32_t f = 0; f < group.size(); ++f)
        members[group[f]].push_back(f);
    std::vector<TriangleMesh> parts;
    for (const std::vector<std::uint32_t>& facets : members)
        if (!facets.empty())
            parts.push_back(part_of(whole, facets));
    return parts;
}

std::vector<TriangleMesh> tiers(const TriangleMesh& lit, const KeptParts& kept,
                                const SpaceReach& reach, Length chord_error)
{
    std::vector<TriangleMesh> whole{lit};
    for (int i = 0; i < most_splits; ++i) {
        std::vector<TriangleMesh> finer;
        for (const TriangleMesh& tier : whole) {
            if (tier.facets.size() < 2 || !has_gap(tier, kept.field, reach, chord_error)) {
                finer.push_back(tier);
                continue;
            }
            for (TriangleMesh& part : split(tier))
                finer.push_back(std::move(part));
        }
        if (finer.size() == whole.size())
            break;
        whole = std::move(finer);
    }
    return whole;
}

void append(TriangleMesh& mesh, const TriangleMesh& more)
{
    const auto first = static_cast<std::uint32_t>(mesh.points.size());
    mesh.points.insert(mesh.points.end(), more.points.begin(), more.points.end());
    for (const Facet& f : more.facets)
        mesh.facets.push_back({first + f[0], first + f[1], first + f[2]});
}

} // namespace

KeepClearBodies keep_clear_bodies(const TriangleMesh& lit, const KeptParts& kept,
                                  const SpaceReach& reach, Length chord_error,
                                  const Workers& workers)
{
    KeepClearBodies bodies;
    bodies.within = chord_error;
    for (const TriangleMesh& tier : tiers(lit, kept, reach, chord_error)) {
        const KeepClearSet set(sheaves_of(tier, kept), reach.levels);
        const KeepClearBody body = keep_clear_body(set, reach.plan, chord_error, workers);
        if (body.mesh.facets.empty())
            continue;
        append(bodies.mesh, body.mesh);
        bodies.volume += body.volume;
        bodies.count += 1;
        if (!body.within)
            bodies.within.reset();
    }
    return bodies;
}

Volume about_volume(const KeepClearSet& set, const SpaceReach& reach, const std::stop_token& stop)
{
    Point2 least = reach.plan.front(), most = least;
    for (const Point2& p : reach.plan) {
        least = least.cwiseMin(p);
        most = most.cwiseMax(p);
    }
    const Point2 step = (most - least) / volume_grid;
    double heights = 0;
    for (int i = 0; i < volume_grid; ++i) {
        if (stop.stop_requested())
            throw Stopped();
        for (int j = 0; j < volume_grid; ++j) {
            const Point2 place = least + Point2(step.x() * (i + 0.5), step.y() * (j + 0.5));
            if (const std::optional<HeightSpan> column = set.column(place))
                heights += in_mm(column->top - column->bottom);
        }
    }
    return cubic_millimetres(heights * step.x() * step.y());
}

} // namespace glim
