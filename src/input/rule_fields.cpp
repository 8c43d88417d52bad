#include "input/rule_fields.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr double most_h = 180; ///< degrees: straight behind
constexpr double most_v = 90;  ///< degrees: straight up

struct Ends {
    double least;
    double most;
};

std::optional<Ends> read_ends(TableReader& table, std::string_view key, double most)
{
    const std::string name(key);
    const std::string remedy = "write " + name + " = [least, most] in degrees, least first";
    if (!table.demand(key, remedy))
        return std::nullopt;
    const std::optional<std::vector<double>> ends = table.numbers(key, 2, remedy);
    if (!ends)
        return std::nullopt;
    const double a = (*ends)[0], b = (*ends)[1];
    if (a > b) {
        table.complain(key, "`" + name + "` of " + table.words() + " is upside down", remedy);
        return std::nullopt;
    }
    if (std::max(std::abs(a), std::abs(b)) > most) {
        table.complain(key, "`" + name + "` of " + table.words() + " goes beyond the sphere",
                       "stay between -" + std::to_string(std::lround(most)) + " and " +
                           std::to_string(std::lround(most)) + " degrees");
        return std::nullopt;
    }
    return Ends{a, b};
}

FieldRectangle rectangle(const Ends& h, const Ends& v, PositiveH positive)
{
    const bool turn = positive == PositiveH::inboard;
    // 0 - h: minus zero would be written as "-0".
    return {degrees(turn ? 0 - h.most : h.least), degrees(turn ? 0 - h.least : h.most),
            degrees(v.least), degrees(v.most)};
}

std::optional<FieldRectangle> read_rectangle(TableReader& table, PositiveH positive)
{
    const std::optional<Ends> h = read_ends(table, "h", most_h);
    const std::optional<Ends> v = read_ends(table, "v", most_v);
    table.complain_of_unknown_keys();
    if (!h || !v)
        return std::nullopt;
    return rectangle(*h, *v, positive);
}

std::vector<FieldRectangle> read_points(TableReader& table, PositiveH positive)
{
    std::vector<FieldRectangle> points;
    for (const TomlValue& value : table.list("points")) {
        const std::optional<std::vector<double>> hv = numbers_in(value, 2);
        if (hv && std::abs((*hv)[0]) <= most_h && std::abs((*hv)[1]) <= most_v)
            points.push_back(rectangle({(*hv)[0], (*hv)[0]}, {(*hv)[1], (*hv)[1]}, positive));
        else
            table.complaints().add(value.place, "a point of " + table.words() + " is no direction",
                                   "write [h, v] in degrees, h within 180 and v within 90");
    }
    return points;
}

} // namespace

std::optional<Field> read_field(TableReader& table, PositiveH positive)
{
    const std::size_t ways = table.has("field") + table.has("fields") + table.has("points");
    const std::size_t complaints_before = table.complaints().size();
    Field field;
    if (std::optional<TableReader> one = table.table("field", "`field` of " + table.words()))
        if (const auto r = read_rectangle(*one, positive))
            field.rectangles.push_back(*r);
    for (TableReader& one : table.tables("fields", "`fields` of " + table.words()))
        if (const auto r = read_rectangle(one, positive))
            field.rectangles.push_back(*r);
    for (const FieldRectangle& point : read_points(table, positive))
        field.rectangles.push_back(point);
    const bool sound = table.complaints().size() == complaints_before;
    if (ways != 1 || (sound && field.rectangles.empty()))
        table.complaints().add(
            table.place(), table.words() + " does not say just once which directions it asks for",
            "write one of field = { h = [a, b], v = [c, d] }, fields = [...] or "
            "points = [[h, v], ...], in degrees");
    if (!sound || ways != 1 || field.rectangles.empty())
        return std::nullopt;
    return field;
}

} // namespace glim
