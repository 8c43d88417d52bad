#include "model/intensity_grid.h"

#include <algorithm>
#include <tuple>

namespace glim {

namespace {

/// Between which two of the grid's angles, and how far from the lower towards the upper one.
struct Between {
    std::size_t lower;
    double share;
};

std::optional<Between> between(const std::vector<Angle>& angles, Angle a)
{
    if (a < angles.front() - range_grain || a > angles.back() + range_grain)
        return std::nullopt;
    const Angle inside = std::clamp(a, angles.front(), angles.back());
    // The last angle belongs to the last gap.
    const auto above = std::upper_bound(angles.begin() + 1, angles.end() - 1, inside);
    const auto upper = static_cast<std::size_t>(above - angles.begin());
    return Between{upper - 1, (inside - angles[upper - 1]) / (angles[upper] - angles[upper - 1])};
}

bool near(Angle a, Angle b) { return a - b <= range_grain && b - a <= range_grain; }

/// At a pole the angle about it says nothing: the measured one nearest to it stands for all.
FileAngles settled_at_poles(const IntensityGrid& grid, const FileAngles& angles)
{
    const Angle right = degrees(90);
    const auto into = [](const std::vector<Angle>& range, Angle a) {
        return std::clamp(a, range.front(), range.back());
    };
    switch (grid.goniometer) {
    case Goniometer::a:
        if (near(angles.v, right) || near(angles.v, -right))
            return {into(grid.horizontal, degrees(0)), angles.v};
        break;
    case Goniometer::b:
        if (near(angles.h, right) || near(angles.h, -right))
            return {angles.h, into(grid.vertical, degrees(0))};
        break;
    case Goniometer::c:
        if (near(angles.v, degrees(0)) || near(angles.v, degrees(180)))
            return {into(grid.horizontal, degrees(0)), angles.v};
        break;
    }
    return angles;
}

Angle size_of(Angle a) { return a < degrees(0) ? -a : a; }

} // namespace

std::optional<Intensity> intensity_at(const IntensityGrid& grid, const FileAngles& angles)
{
    const FileAngles settled = settled_at_poles(grid, angles);
    const std::optional<Between> h = between(grid.horizontal, settled.h);
    const std::optional<Between> v = between(grid.vertical, settled.v);
    if (!h || !v)
        return std::nullopt;
    const auto along_v = [&](std::size_t plane) {
        return (1 - v->share) * grid.at(plane, v->lower) + v->share * grid.at(plane, v->lower + 1);
    };
    return (1 - h->share) * along_v(h->lower) + h->share * along_v(h->lower + 1);
}

std::optional<Intensity> intensity_toward(const IntensityGrid& grid, const Direction& d)
{
    return intensity_at(grid, file_angles(grid.goniometer, d));
}

MeasuredRange measured_range(const IntensityGrid& grid)
{
    return {.h_least = grid.horizontal.front(),
            .h_most = grid.horizontal.back(),
            .v_least = grid.vertical.front(),
            .v_most = grid.vertical.back()};
}

Peak peak_of(const IntensityGrid& grid)
{
    const auto better = [](const Peak& a, const Peak& b) {
        return std::tuple(b.intensity, size_of(a.at.v), size_of(a.at.h)) <
               std::tuple(a.intensity, size_of(b.at.v), size_of(b.at.h));
    };
    Peak peak{grid.at(0, 0), {grid.horizontal.front(), grid.vertical.front()}};
    for (std::size_t h = 0; h < grid.horizontal.size(); ++h)
        for (std::size_t v = 0; v < grid.vertical.size(); ++v)
            if (const Peak here{grid.at(h, v), {grid.horizontal[h], grid.vertical[v]}};
                better(here, peak))
                peak = here;
    return peak;
}

} // namespace glim
