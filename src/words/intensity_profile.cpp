#include "words/intensity_profile.h"

#include "words/light_words.h"
#include "words/numbers.h"
#include "words/text_block.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>

namespace glim {

namespace {

constexpr double most_points = 25;
constexpr std::array steps_deg = {0.1, 0.2, 0.5, 1.0, 2.0, 2.5, 5.0, 10.0, 15.0, 30.0};

double step_for(double span_deg)
{
    for (const double step : steps_deg)
        if (span_deg / step <= most_points - 1)
            return step;
    return steps_deg.back();
}

/// The points at whole steps from `least` to `most`, as far as they are measured.
std::vector<IntensityProfile::Point> points_along(const IntensityGrid& grid, Angle least,
                                                  Angle most,
                                                  const std::function<FileAngles(Angle)>& place)
{
    const double step = step_for(in_degrees(most - least));
    std::vector<IntensityProfile::Point> points;
    const long first = std::lround(std::ceil(in_degrees(least) / step));
    const long last = std::lround(std::floor(in_degrees(most) / step));
    for (long i = first; i <= last; ++i)
        if (const auto intensity = intensity_at(grid, place(degrees(step * double(i)))))
            points.push_back({degrees(step * double(i)), *intensity});
    return points;
}

IntensityProfile gamma_profile(const IntensityGrid& grid, Angle plane)
{
    const Angle opposite = plane + degrees(180);
    const Angle most = grid.vertical.back();
    const auto place = [&](Angle gamma) {
        return gamma < degrees(0) ? FileAngles{opposite, -gamma} : FileAngles{plane, gamma};
    };
    return {"Along gamma through C " + bare_angle(plane) + ", negative through C " +
                bare_angle(opposite) + ", in cd",
            "gamma", points_along(grid, -most, most, place)};
}

Angle nearest_to_zero(Angle least, Angle most) { return std::clamp(degrees(0), least, most); }

} // namespace

std::vector<IntensityProfile> intensity_profiles(const IntensityGrid& grid)
{
    if (grid.goniometer == Goniometer::c)
        return {gamma_profile(grid, degrees(0)), gamma_profile(grid, degrees(90))};
    const MeasuredRange range = measured_range(grid);
    const Angle v = nearest_to_zero(range.v_least, range.v_most);
    const Angle h = nearest_to_zero(range.h_least, range.h_most);
    return {{"Along H at V " + bare_angle(v) + ", in cd", "H",
             points_along(grid, range.h_least, range.h_most,
                          [&](Angle along) {
                              return FileAngles{along, v};
                          })},
            {"Along V at H " + bare_angle(h) + ", in cd", "V",
             points_along(grid, range.v_least, range.v_most, [&](Angle along) {
                 return FileAngles{h, along};
             })}};
}

std::vector<std::string> profile_lines(const IntensityProfile& profile, Intensity full,
                                       int bar_columns)
{
    std::vector<std::vector<std::string>> rows;
    for (const IntensityProfile::Point& point : profile.points) {
        const double share = full > candelas(0) ? point.intensity / full : 0;
        const long least = point.intensity > candelas(0) ? 1 : 0;
        const long length = std::clamp(std::lround(share * bar_columns), least, long{bar_columns});
        rows.push_back({profile.angle, bare_angle(point.at),
                        column_intensity(point.intensity, full),
                        std::string(static_cast<std::size_t>(length), '#')});
    }
    return aligned_rows(rows, {1, 2});
}

} // namespace glim
