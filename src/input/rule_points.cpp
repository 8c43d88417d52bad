#include "input/rule_points.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr double most_h = 180; ///< degrees: straight behind
constexpr double most_v = 90;  ///< degrees: straight up

Bearing mirrored(const Bearing& b)
{
    return {degrees(0 - in_degrees(b.h)), b.v}; // 0 - h: minus zero would be written as "-0"
}

/// Whether [h, v, figure] is a direction and a figure above 0.
bool is_sound(const std::vector<double>& point)
{
    return std::abs(point[0]) <= most_h && std::abs(point[1]) <= most_v && point[2] > 0;
}

/// `unit` is what a figure of 1 stands for.
std::vector<LightPoint> read_points(TableReader& table, std::string_view key, Intensity unit)
{
    std::vector<LightPoint> points;
    for (const TomlValue& value : table.list(key)) {
        const std::optional<std::vector<double>> read = numbers_in(value, 3);
        if (!read || !is_sound(*read)) {
            table.complaints().add(value.place,
                                   "a point of " + table.words() + " is no direction with a figure",
                                   "write [h, v, " + std::string(key) +
                                       "], h within 180 and v within 90 degrees, the figure above "
                                       "0");
            continue;
        }
        const Bearing toward{degrees((*read)[0]), degrees((*read)[1])};
        const bool twice = std::any_of(points.begin(), points.end(),
                                       [&](const LightPoint& p) { return p.toward == toward; });
        if (twice)
            table.complaints().add(value.place, "a point of " + table.words() + " is there already",
                                   "keep one of the two");
        points.push_back({toward, unit * (*read)[2]});
    }
    return points;
}

void add_mirror_images(std::vector<LightPoint>& points)
{
    const std::vector<LightPoint> one_side = points;
    for (const LightPoint& p : one_side)
        if (mirrored(p.toward) != p.toward)
            points.push_back({mirrored(p.toward), p.least});
}

/// Above 0; 0 after a complaint.
double above_zero(TableReader& table, std::string_view key, std::string_view unit,
                  const std::string& remedy)
{
    const double figure = table.number(key, unit).value_or(0);
    if (table.has(key) && figure <= 0)
        table.complain(key, "`" + std::string(key) + "` of " + table.words() + " is not above 0",
                       remedy);
    return figure;
}

LightGroup read_group(TableReader& table)
{
    LightGroup group;
    table.demand("name", "write how the regulation calls the group");
    group.name = table.text("name").value_or("");
    const std::string remedy = "write total = the sum that the group needs, in cd";
    table.demand("total", remedy);
    group.total = candelas(above_zero(table, "total", "cd", remedy));
    table.demand("cd", "write cd = [[h, v, cd], ...]");
    group.points = read_points(table, "cd", candelas(1));
    table.complain_of_unknown_keys();
    return group;
}

void complain_unless_one_way(TableReader& table)
{
    const std::size_t ways = table.has("cd") + table.has("percent") + table.has("groups");
    if (ways != 1)
        table.complaints().add(table.place(),
                               table.words() + " does not give its points in one way",
                               "write one of cd = [[h, v, cd], ...], percent = [[h, v, percent], "
                               "...] with axis_cd, and groups = [{ name, total, cd }, ...]");
    if (table.has("percent") != table.has("axis_cd"))
        table.complaints().add(table.place(),
                               table.words() + " has one of `percent` and `axis_cd` alone",
                               "write axis_cd = the intensity on the axis of which the points are "
                               "percent");
    if (table.has("floor") && !table.has("groups"))
        table.complain("floor", table.words() + " has a floor without groups",
                       "take `floor` away: it is the share that a point of a group needs alone");
    if (table.has("mirrored") && table.has("groups"))
        table.complain("mirrored", table.words() + " mirrors groups",
                       "take `mirrored` away and write every group out");
}

} // namespace

Criterion read_point_table(TableReader& table)
{
    LightTable points;
    complain_unless_one_way(table);
    const double axis = above_zero(table, "axis_cd", "cd", "write the intensity on the axis in cd");
    if (table.has("axis_cd"))
        points.axis = candelas(axis);
    points.points = read_points(table, "cd", candelas(1));
    // In one step: 90 x 4 / 100 is 3.6 as a person writes it, 90 x 0.04 is not.
    for (LightPoint& p : read_points(table, "percent", candelas(1)))
        points.points.push_back({p.toward, candelas(in_candelas(p.least) * axis / 100)});
    if (table.truth("mirrored").value_or(false))
        add_mirror_images(points.points);
    for (TableReader& one : table.tables("groups", "`groups` of " + table.words()))
        points.groups.push_back(read_group(one));
    const std::string floor_remedy = "write a share above 0 and up to 1: 0.6 is 60 %";
    if (table.has("floor"))
        points.floor = above_zero(table, "floor", "of 1", floor_remedy);
    if (points.floor > 1)
        table.complain("floor", "`floor` of " + table.words() + " is above 1", floor_remedy);
    points.multiplied_by = table.text("multiplied_by").value_or("");
    return points;
}

void turn_about_vertical(LightTable& table)
{
    for (LightPoint& p : table.points)
        p.toward = mirrored(p.toward);
    for (LightGroup& group : table.groups)
        for (LightPoint& p : group.points)
            p.toward = mirrored(p.toward);
}

void keep_points(TableReader& row, const Field& points, Field& relaxed)
{
    Field kept;
    for (const FieldRectangle& p : points.rectangles)
        if (relaxed.holds({p.h_least, p.v_least}))
            kept.rectangles.push_back(p);
    if (kept.rectangles.empty() && !relaxed.rectangles.empty())
        row.complain("relaxed", "a relaxed field of " + row.words() + " holds none of its points",
                     "widen the field to the points that remain");
    relaxed = std::move(kept);
}

} // namespace glim
