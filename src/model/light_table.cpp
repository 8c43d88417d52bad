#include "model/light_table.h"

#include <algorithm>

namespace glim {

namespace {

void add(std::vector<Bearing>& all, const std::vector<LightPoint>& points)
{
    for (const LightPoint& p : points)
        if (std::find(all.begin(), all.end(), p.toward) == all.end())
            all.push_back(p.toward);
}

/// The most that any of the points asks there.
std::optional<Intensity> most_asked(const std::vector<LightPoint>& points, const Bearing& toward)
{
    std::optional<Intensity> most;
    for (const LightPoint& p : points)
        if (p.toward == toward)
            most = std::max(most.value_or(p.least), p.least);
    return most;
}

} // namespace

std::vector<Bearing> directions_of(const LightTable& table)
{
    std::vector<Bearing> all;
    add(all, table.points);
    for (const LightGroup& group : table.groups)
        add(all, group.points);
    return all;
}

Field field_of(const LightTable& table)
{
    Field field;
    for (const Bearing& b : directions_of(table))
        field.rectangles.push_back({b.h, b.h, b.v, b.v});
    return field;
}

std::optional<Intensity> least_toward(const LightTable& table, const Bearing& toward)
{
    std::optional<Intensity> least = most_asked(table.points, toward);
    for (const LightGroup& group : table.groups)
        if (const auto asked = most_asked(group.points, toward))
            least = std::max(least.value_or(Intensity()), *asked * table.floor);
    return least;
}

} // namespace glim
