#include "geometry/direction_grid.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace glim {

namespace {

/// The field's own edges, and between the outermost of them the multiples of `step`.
std::vector<Angle> lines(std::vector<Angle> edges, Angle step)
{
    const auto [least, most] = std::minmax_element(edges.begin(), edges.end());
    const double first = std::ceil(*least / step);
    const double last = std::floor(*most / step);
    std::vector<Angle> all = edges;
    for (double i = first; i <= last; ++i)
        all.push_back(i * step);
    std::sort(all.begin(), all.end());
    // A multiple that misses an edge by rounding alone is that edge.
    const Angle grain = 1e-9 * step;
    std::vector<Angle> distinct;
    for (const Angle a : all)
        if (distinct.empty() || a - distinct.back() > grain)
            distinct.push_back(a);
        else if (std::find(edges.begin(), edges.end(), a) != edges.end())
            distinct.back() = a;
    return distinct;
}

/// Half of the gap to the neighbouring line before (`side` -1) or after (+1), as an interval.
struct HalfGap {
    Angle least, most;
};

HalfGap half_gap(const std::vector<Angle>& lines, std::size_t i, int side)
{
    const Angle here = lines[i];
    if (side < 0)
        return i == 0 ? HalfGap{here, here} : HalfGap{(lines[i - 1] + here) / 2, here};
    return i + 1 == lines.size() ? HalfGap{here, here} : HalfGap{here, (here + lines[i + 1]) / 2};
}

/// The part of the field in the four quarters of the node's own cell; each quarter lies in one
/// cell of the grid, so it belongs to the field wholly or not at all.
SolidAngle weight_of(const Field& field, const std::vector<Angle>& hs, const std::vector<Angle>& vs,
                     std::size_t i, std::size_t j)
{
    SolidAngle sum;
    for (const int h_side : {-1, 1})
        for (const int v_side : {-1, 1}) {
            const HalfGap h = half_gap(hs, i, h_side);
            const HalfGap v = half_gap(vs, j, v_side);
            if (field.holds({(h.least + h.most) / 2, (v.least + v.most) / 2}))
                sum += solid_angle(FieldRectangle{h.least, h.most, v.least, v.most});
        }
    return sum;
}

} // namespace

DirectionGrid grid_of(const Field& field, Angle step)
{
    assert(step > degrees(0) && !field.rectangles.empty());
    std::vector<Angle> h_edges, v_edges;
    for (const FieldRectangle& r : field.rectangles) {
        assert(r.h_least <= r.h_most && r.v_least <= r.v_most);
        h_edges.insert(h_edges.end(), {r.h_least, r.h_most});
        v_edges.insert(v_edges.end(), {r.v_least, r.v_most});
    }
    const std::vector<Angle> hs = lines(std::move(h_edges), step);
    const std::vector<Angle> vs = lines(std::move(v_edges), step);

    DirectionGrid grid;
    for (std::size_t j = 0; j < vs.size(); ++j)
        for (std::size_t i = 0; i < hs.size(); ++i)
            if (const Bearing node{hs[i], vs[j]}; field.holds(node)) {
                grid.nodes.push_back(node);
                grid.weights.push_back(weight_of(field, hs, vs, i, j));
            }
    return grid;
}

} // namespace glim
