#include "remedy/depth_field.h"

#include "remedy/cone_tops.h"
#include "remedy/freed_area.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <span>

namespace glim {

namespace {

constexpr double nowhere = -std::numeric_limits<double>::infinity();
/// Hollows are filled to neighbours' means so often: narrow ones vanish, wide ones stay.
constexpr int filling_rounds = 12;

/// Each point's neighbours along edges, all behind each other.
class Neighbours {
public:
    explicit Neighbours(const TriangleMesh& mesh) : from_(mesh.points.size() + 1)
    {
        std::vector<std::pair<std::uint32_t, std::uint32_t>> ways;
        ways.reserve(6 * mesh.facets.size());
        for (const Facet& f : mesh.facets)
            for (int i = 0; i < 3; ++i)
                for (const int j : {(i + 1) % 3, (i + 2) % 3})
                    if (f[i] != f[j])
                        ways.emplace_back(f[i], f[j]);
        std::sort(ways.begin(), ways.end());
        ways.erase(std::unique(ways.begin(), ways.end()), ways.end());
        for (const auto& [a, b] : ways) {
            ++from_[a + 1];
            to_.push_back(b);
        }
        for (std::size_t i = 1; i < from_.size(); ++i)
            from_[i] += from_[i - 1];
    }
    std::span<const std::uint32_t> of(std::uint32_t point) const
    {
        return std::span(to_).subspan(from_[point], from_[point + 1] - from_[point]);
    }

private:
    std::vector<std::size_t> from_;
    std::vector<std::uint32_t> to_;
};

double distance_across(const Point& a, const Point& b, const Direction& push)
{
    const Vector way = b - a;
    return (way - push.dot(way) * push.vector()).norm();
}

/// At each point the cones of `slope` over `heights`, as far down as `floor`.
std::vector<double> cones(const TriangleMesh& mesh, const Direction& push,
                          const std::vector<double>& heights, double slope, double floor)
{
    const ConeTops tops(mesh.points, push, heights, slope);
    std::vector<double> field;
    field.reserve(mesh.points.size());
    for (const Point& p : mesh.points)
        field.push_back(tops.at(p, floor));
    return field;
}

/// Straight above `band`, 0 below -band, a parabola between that touches both.
double blended(double x, double band)
{
    if (x >= band)
        return x;
    return x <= -band ? 0 : (x + band) * (x + band) / (4 * band);
}

/// Raises points to their neighbours' mean where they lie below it; never above the highest, nor
/// past the slope over any neighbour.
void fill_hollows(const TriangleMesh& mesh, const Direction& push, double slope,
                  std::vector<double>& field)
{
    const Neighbours neighbours(mesh);
    std::vector<double> before;
    for (int round = 0; round < filling_rounds; ++round) {
        before = field;
        for (std::uint32_t p = 0; p < field.size(); ++p) {
            if (before[p] == nowhere)
                continue;
            double sum = 0;
            double highest = -nowhere;
            const auto around = neighbours.of(p);
            for (const std::uint32_t n : around) {
                sum += before[n];
                highest =
                    std::min(highest, before[n] + slope * distance_across(mesh.points[p],
                                                                          mesh.points[n], push));
            }
            const double mean = sum / static_cast<double>(around.size());
            if (std::isfinite(mean))
                field[p] = std::max(before[p], std::min(mean, highest));
        }
    }
}

} // namespace

double blend_band(const FieldRules& rules)
{
    return rules.blend_mm * rules.slope * std::tan(std::atan(rules.slope) / 2);
}

std::vector<double> depth_caps(const TriangleMesh& mesh, const Direction& push,
                               const std::vector<std::uint8_t>& held, const FieldRules& rules,
                               double deepest_mm)
{
    const double band = blend_band(rules);
    std::vector<double> starts(held.size(), nowhere);
    for (std::size_t p = 0; p < held.size(); ++p)
        if (held[p] != 0)
            starts[p] = 0;
    // Cones turned over: how far down a slope would be that falls from the nearest held point.
    std::vector<double> caps = cones(mesh, push, starts, rules.slope, -deepest_mm - band);
    for (double& cap : caps)
        cap = cap == nowhere ? no_depth : blended(-cap - band, band);
    return caps;
}

std::vector<double> cones_over(const TriangleMesh& mesh, const Direction& push,
                               const std::vector<double>& wanted, const FieldRules& rules,
                               double band_mm)
{
    std::vector<double> tops(wanted.size(), nowhere);
    for (std::size_t p = 0; p < wanted.size(); ++p)
        if (wanted[p] > 0)
            tops[p] = wanted[p];
    return cones(mesh, push, tops, rules.slope, -band_mm);
}

std::vector<double> faired_depths(const TriangleMesh& mesh, const Direction& push,
                                  const std::vector<double>& wanted,
                                  const std::vector<double>& caps, const FieldRules& rules)
{
    const double deepest = *std::max_element(wanted.begin(), wanted.end());
    // A relief shallower than its blend has no room for all of it.
    const double band = std::min(blend_band(rules), deepest);
    std::vector<double> field = cones_over(mesh, push, wanted, rules, band);
    fill_hollows(mesh, push, rules.slope, field);
    for (std::size_t p = 0; p < field.size(); ++p)
        field[p] = field[p] == nowhere ? 0 : std::min(blended(field[p], band), caps[p]);
    return field;
}

} // namespace glim
