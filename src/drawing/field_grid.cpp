#include "drawing/field_grid.h"

#include <algorithm>
#include <array>

namespace glim {

namespace {

void sort_distinct(std::vector<Angle>& lines)
{
    std::sort(lines.begin(), lines.end());
    lines.erase(std::unique(lines.begin(), lines.end()), lines.end());
}

int place_of(const std::vector<Angle>& lines, Angle a)
{
    return static_cast<int>(std::lower_bound(lines.begin(), lines.end(), a) - lines.begin());
}

Bearing middle(const Bearing& a, const Bearing& b) { return {(a.h + b.h) / 2, (a.v + b.v) / 2}; }

} // namespace

FieldGrid::FieldGrid(std::span<const Bearing> nodes, const Field& field) : field_(field)
{
    for (const Bearing& b : nodes) {
        hs_.push_back(b.h);
        vs_.push_back(b.v);
    }
    sort_distinct(hs_);
    sort_distinct(vs_);
    nodes_.resize(hs_.size() * vs_.size());
    has_cell_.resize(nodes_.size());
    for (std::size_t i = 0; i < nodes.size(); ++i)
        nodes_[slot(place_of(vs_, nodes[i].v), place_of(hs_, nodes[i].h))] = i;
    for (int v = 0; v + 1 < v_lines(); ++v)
        for (int h = 0; h + 1 < h_lines(); ++h) {
            const bool whole = node(v, h) && node(v, h + 1) && node(v + 1, h) && node(v + 1, h + 1);
            has_cell_[slot(v, h)] =
                whole && field_.holds(middle(bearing(v, h), bearing(v + 1, h + 1)));
            cells_ += has_cell_[slot(v, h)] ? 1 : 0;
        }
}

std::optional<std::size_t> FieldGrid::node(int v, int h) const
{
    return inside(v, h) ? nodes_[slot(v, h)] : std::nullopt;
}

bool FieldGrid::has_cell(int v, int h) const { return inside(v, h) && has_cell_[slot(v, h)]; }

bool FieldGrid::joined_along_h(int v, int h) const
{
    return node(v, h) && node(v, h + 1) && field_.holds(middle(bearing(v, h), bearing(v, h + 1)));
}

bool FieldGrid::joined_along_v(int v, int h) const
{
    return node(v, h) && node(v + 1, h) && field_.holds(middle(bearing(v, h), bearing(v + 1, h)));
}

std::optional<FieldGrid::Within> FieldGrid::cell_around(const Bearing& b) const
{
    const int v_after = place_of(vs_, b.v), h_after = place_of(hs_, b.h);
    // On a line the cell before it and the one after it will both do.
    for (const int v : {v_after - 1, v_after})
        for (const int h : {h_after - 1, h_after}) {
            if (!has_cell(v, h))
                continue;
            const Bearing first = bearing(v, h), last = bearing(v + 1, h + 1);
            if (b.v < first.v || b.h < first.h || b.v > last.v || b.h > last.h)
                continue;
            return Within{v, h, (b.v - first.v) / (last.v - first.v),
                          (b.h - first.h) / (last.h - first.h)};
        }
    return std::nullopt;
}

std::optional<double> FieldGrid::value_at(const Bearing& b, std::span<const double> figures) const
{
    const auto cell = cell_around(b);
    if (!cell)
        return std::nullopt;
    const auto [v, h, up, along] = *cell;
    const double low = figures[*node(v, h)] * (1 - along) + figures[*node(v, h + 1)] * along;
    const double high =
        figures[*node(v + 1, h)] * (1 - along) + figures[*node(v + 1, h + 1)] * along;
    return low * (1 - up) + high * up;
}

std::optional<std::size_t> FieldGrid::nearest_to(const Bearing& b) const
{
    const auto cell = cell_around(b);
    if (!cell)
        return std::nullopt;
    return node(cell->v + (cell->v_share < 0.5 ? 0 : 1), cell->h + (cell->h_share < 0.5 ? 0 : 1));
}

} // namespace glim
