#include "words/headroom_words.h"

#include "remedy/way_to_space.h"
#include "words/name_list.h"
#include "words/numbers.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr int indent = 2;
/// So many are told of in a sentence; a table has the rest.
constexpr std::size_t most_told = 5;
/// Figures are written to 0.01 mm below this, to 0.1 mm from here on.
constexpr double fine_below_mm = 10;

std::string mm(Length length)
{
    const double count = std::abs(in_mm(length));
    return rounded(count, count < fine_below_mm ? 2 : 1);
}

/// Of a headroom below zero how deep it is.
std::string depth_words(Length length)
{
    return mm(length) + (length <= Length() - deepest_intrusion ? " mm or more" : " mm");
}

std::string signed_mm(Length length)
{
    const std::string figure = mm(length);
    return length < Length() && figure != "0" ? "-" + figure : figure;
}

/// Deeper than the deepest is not told apart.
std::string table_mm(Length length)
{
    return signed_mm(length) + (length <= Length() - deepest_intrusion ? " or deeper" : "");
}

std::string at(const Point& p)
{
    return "(" + rounded(p.x(), 1) + ", " + rounded(p.y(), 1) + ", " + rounded(p.z(), 1) + ")";
}

/// Of a surface and its mirror image the tighter one, in the same order.
std::vector<const Headroom*> one_a_surface(const std::vector<Headroom>& headroom)
{
    std::vector<const Headroom*> some;
    for (const Headroom& h : headroom)
        if (std::none_of(some.begin(), some.end(), [&](const Headroom* other) {
                return other->surface.surface == h.surface.surface;
            }))
            some.push_back(&h);
    return some;
}

/// "`nose` has 1.4 mm, `wing` 0.3 mm and `roof` 8 mm"
std::string told(const std::vector<std::string>& names, const std::vector<std::string>& figures,
                 const std::string& verb, const std::string& last)
{
    std::vector<std::string> items;
    for (std::size_t i = 0; i < names.size(); ++i)
        items.push_back(names[i] + (i == 0 ? " " + verb + " " : " ") + figures[i] +
                        (i == 0 ? last : ""));
    return name_list(items);
}

std::string space_words(const KeepClearSpace& space)
{
    return space.row.id + ", " + space.lamp + (space.twin ? " (mirrored)" : "");
}

/// Told in a table: "lamp bezel (mirrored)"
std::string row_name(const HeadroomRow& row, const Study& study)
{
    const Standing& surface = row.headroom->surface;
    return study.surfaces[surface.surface].name + (row.both_sides ? " (each side)"
                                                   : surface.twin ? " (mirrored)"
                                                                  : "");
}

/// Twins that differ by less were looked at in other places.
constexpr Length same_within = millimetres(0.02);

bool is_twin_of(const Headroom& a, const Headroom& b)
{
    return a.surface.surface == b.surface.surface && a.least.has_value() == b.least.has_value() &&
           (!a.least || std::abs(in_mm(*a.least - *b.least)) < in_mm(same_within));
}

std::string table_area(Area area)
{
    if (area == Area())
        return "-";
    return area < square_millimetres(1) ? "< 1" : rounded(in_mm2(area), 0);
}

/// The levels whose areas a table has, places in headroom_levels: 1, 5 and 10 mm.
constexpr std::array<std::size_t, 3> told_levels = {1, 3, 4};

} // namespace

std::vector<HeadroomRow> headroom_rows(const std::vector<Headroom>& headroom)
{
    std::vector<HeadroomRow> rows;
    for (const Headroom& h : headroom) {
        const auto twin = std::find_if(rows.begin(), rows.end(), [&](const HeadroomRow& row) {
            return is_twin_of(*row.headroom, h);
        });
        if (twin == rows.end())
            rows.push_back({&h});
        else
            twin->both_sides = true;
    }
    return rows;
}

std::string headroom_sentence(const std::vector<Headroom>& headroom, const Study& study)
{
    if (headroom.empty())
        return {};
    std::vector<std::string> inside, inside_mm, free, free_mm;
    std::size_t more = 0, beyond = 0;
    for (const Headroom* h : one_a_surface(headroom)) {
        if (!h->least) {
            beyond += 1;
            continue;
        }
        if (inside.size() + free.size() == most_told) {
            more += 1;
            continue;
        }
        const bool is_inside = *h->least < Length();
        (is_inside ? inside : free).push_back(quoted(study.surfaces[h->surface.surface].name));
        (is_inside ? inside_mm : free_mm).push_back(depth_words(*h->least));
    }
    std::vector<std::string> parts;
    if (!inside.empty())
        parts.push_back(told(inside, inside_mm, "is", " inside"));
    if (!free.empty())
        parts.push_back(told(free, free_mm, "has", ""));
    if (more > 0)
        parts.push_back(counted(more, "more surface") + (more == 1 ? " has" : " have") +
                        " less than " + mm(farthest_way_in) + " mm");
    if (beyond > 0)
        parts.push_back(counted(beyond, "surface") + (beyond == 1 ? " has " : " have ") +
                        mm(farthest_way_in) + " mm or more");
    std::string words = "Headroom along the normal, tightest first: ";
    for (std::size_t i = 0; i < parts.size(); ++i)
        words += (i > 0 ? "; " : "") + parts[i];
    return words + ".";
}

std::vector<std::vector<std::string>> headroom_cells(const std::vector<Headroom>& headroom,
                                                     const KeepClear& found, const Study& study)
{
    std::vector<std::vector<std::string>> rows{{"surface", "headroom mm", "tightest at"}};
    for (const std::size_t level : told_levels)
        rows.front().push_back("mm2 < " + mm(headroom_levels[level]) + " mm");
    rows.front().push_back("to the space of");
    for (const HeadroomRow& told : headroom_rows(headroom)) {
        const Headroom& h = *told.headroom;
        std::vector<std::string> row{
            row_name(told, study), h.least ? table_mm(*h.least) : mm(farthest_way_in) + " or more",
            h.least ? at(h.tightest) : "-"};
        for (const std::size_t level : told_levels)
            row.push_back(table_area(h.within[level]));
        row.push_back(h.least ? space_words(found.spaces[h.space]) : "-");
        rows.push_back(std::move(row));
    }
    return rows;
}

std::string headroom_words(const std::vector<Headroom>& headroom, const KeepClear& found,
                           const Study& study, const TextStyle& style)
{
    if (headroom.empty())
        return {};
    std::string text = wrapped(headroom_sentence(headroom, study), style.columns) + "\n\n";
    std::vector<std::vector<std::string>> cells = headroom_cells(headroom, found, study);
    for (std::vector<std::string>& row : cells) // the page has the rest
        row.pop_back();
    for (const std::string& line : aligned_rows(cells, {1, 3, 4, 5}))
        text += std::string(indent, ' ') + line + "\n";
    return text;
}

} // namespace glim
