#include "judgement/between_directions.h"
#include "judgement/grid_lines.h"
#include "machine/stop.h"

#include <algorithm>

namespace glim {

namespace {

struct Corner {
    Bearing toward;
    Area visible, error;
};

/// Of what is not surely met, the most doubtful; more would be settled exactly for little more
/// sense.
constexpr std::size_t most_open = 64;

/// A rectangle of directions: least H and V first, then along H, then along V. `change` is how much
/// the area may change across it, by what it does at its corners and to their neighbours.
struct GridCell {
    std::array<Corner, 4> corners;
    Area change;
};

Area change_between(const std::array<Corner, 4>& corners)
{
    const auto [least, most] =
        std::minmax_element(corners.begin(), corners.end(),
                            [](const Corner& a, const Corner& b) { return a.visible < b.visible; });
    return most->visible - least->visible;
}

/// A verdict's grid as corners and cells.
class AreaGrid {
public:
    AreaGrid(const LampVerdict& verdict, const LampLook& look)
        : verdict_(verdict), look_(look), lines_(verdict, look)
    {
    }

    std::vector<GridCell> cells() const
    {
        std::vector<GridCell> cells;
        for (const auto& [node, here] : lines_.nodes()) {
            const auto right = lines_.at({node.v, node.h + 1});
            const auto above = lines_.at({node.v + 1, node.h});
            const auto across = lines_.at({node.v + 1, node.h + 1});
            if (!right || !above || !across ||
                !adjoin(corner(here).toward, corner(*across).toward, verdict_.field))
                continue;
            const std::array corners = {corner(here), corner(*right), corner(*above),
                                        corner(*across)};
            Area change = change_between(corners);
            for (const auto& [v, h] : {std::pair(0, 0), {0, 1}, {1, 0}, {1, 1}})
                change = std::max(change, change_at({node.v + v, node.h + h}));
            cells.push_back({corners, change});
        }
        return cells;
    }

private:
    Corner corner(std::size_t direction) const
    {
        const std::size_t at = verdict_.directions[direction].at;
        const Area error =
            look_.exact[at] ? look_.exact[at]->rounding : look_.seen[at].expected_error;
        return {look_.toward[at], look_.visible(at), error + look_.mesh_error[at]};
    }

    /// The largest to a neighbour.
    Area change_at(GridLines::Node node) const
    {
        const Area here = corner(*lines_.at(node)).visible;
        Area change;
        for (const auto& [v, h] : {std::pair(0, 1), {1, 0}, {0, -1}, {-1, 0}})
            if (const auto there = lines_.at({node.v + v, node.h + h})) {
                const Area step = corner(*there).visible - here;
                change = std::max({change, step, -step});
            }
        return change;
    }

    const LampVerdict& verdict_;
    const LampLook& look_;
    GridLines lines_;
};

/// Whether the area might fall to the threshold between the corners.
bool is_doubtful(const GridCell& cell, Area needed)
{
    Area least = cell.corners.front().visible;
    for (const Corner& corner : cell.corners)
        least = std::min(least, corner.visible);
    return cell.change > Area() && least - needed < 2 * cell.change;
}

Angle size_of(const GridCell& cell)
{
    const Bearing& least = cell.corners[0].toward;
    const Bearing& most = cell.corners[3].toward;
    return std::max(most.h - least.h, most.v - least.v);
}

Bearing middle_of(const Corner& a, const Corner& b)
{
    return {(a.toward.h + b.toward.h) / 2, (a.toward.v + b.toward.v) / 2};
}

/// Halves doubtful cells level by level, all of one size at once, so that what lies on the edge of
/// two cells is looked at once.
class Subdivider {
public:
    Subdivider(Area needed, std::size_t place, const LampLook& look, const Eyes& eyes,
               const Workers& workers)
        : needed_(needed), place_(place), look_(look), eyes_(eyes), workers_(workers)
    {
    }

    void look_into(std::vector<GridCell> cells, Angle finest)
    {
        while (!cells.empty()) {
            for (const GridCell& cell : cells)
                smallest = std::min(smallest.value_or(size_of(cell)), size_of(cell));
            std::erase_if(cells, [&](const GridCell& cell) {
                return size_of(cell) <= finest || !is_doubtful(cell, needed_);
            });
            look_at_middles(cells);
            std::vector<GridCell> quarters;
            for (const GridCell& cell : cells)
                add_quarters(cell, quarters);
            cells = std::move(quarters);
        }
    }

    std::vector<Corner> open;
    std::optional<Angle> smallest;

private:
    void look_at_middles(const std::vector<GridCell>& cells)
    {
        std::vector<Bearing> toward;
        for (const GridCell& cell : cells) {
            const auto& [a, b, c, d] = cell.corners;
            for (const auto& [from, to] :
                 {std::pair(&a, &b), {&a, &c}, {&b, &d}, {&c, &d}, {&a, &d}})
                toward.push_back(middle_of(*from, *to));
        }
        std::sort(toward.begin(), toward.end(), by_v_then_h);
        toward.erase(std::unique(toward.begin(), toward.end()), toward.end());
        middles_.assign(toward.size(), {});
        if (!for_each_index(toward.size(), workers_,
                            [&](std::size_t i, unsigned) { middles_[i] = seen(toward[i]); }))
            throw Stopped();
        for (const Corner& corner : middles_)
            if (corner.visible - corner.error < needed_)
                open.push_back(corner);
    }

    Corner seen(const Bearing& toward) const
    {
        const SeenArea seen = eyes_.visible(place_, toward, look_.frame);
        return {toward, seen.visible, seen.expected_error + eyes_.mesh_error(place_, seen)};
    }

    const Corner& between(const Corner& a, const Corner& b) const
    {
        return *std::lower_bound(
            middles_.begin(), middles_.end(), middle_of(a, b),
            [](const Corner& corner, const Bearing& m) { return by_v_then_h(corner.toward, m); });
    }

    void add_quarters(const GridCell& cell, std::vector<GridCell>& quarters) const
    {
        const auto& [a, b, c, d] = cell.corners;
        const Corner &ab = between(a, b), &ac = between(a, c), &bd = between(b, d),
                     &cd = between(c, d), &centre = between(a, d);
        for (const std::array<Corner, 4>& quarter : {std::array{a, ab, ac, centre},
                                                     {ab, b, centre, bd},
                                                     {ac, centre, c, cd},
                                                     {centre, bd, cd, d}})
            quarters.push_back({quarter, std::max(change_between(quarter), cell.change / 2)});
    }

    Area needed_;
    std::size_t place_;
    const LampLook& look_;
    const Eyes& eyes_;
    const Workers& workers_;
    std::vector<Corner> middles_; ///< of one level, by V then H
};

std::vector<Bearing> most_doubtful(std::vector<Corner> open)
{
    std::sort(open.begin(), open.end(), [](const Corner& a, const Corner& b) {
        const Area worst_a = a.visible - a.error, worst_b = b.visible - b.error;
        return worst_a != worst_b ? worst_a < worst_b : by_v_then_h(a.toward, b.toward);
    });
    std::vector<Bearing> toward;
    for (const Corner& corner : open)
        if (toward.size() < most_open &&
            std::find(toward.begin(), toward.end(), corner.toward) == toward.end())
            toward.push_back(corner.toward);
    std::sort(toward.begin(), toward.end(), by_v_then_h);
    return toward;
}

} // namespace

BetweenFound BetweenDirections::look_between(const RuleRow& row, const LampVerdict& verdict,
                                             const LampLook& look) const
{
    const Area needed = std::get<LeastArea>(row.criterion).area;
    Subdivider divider(needed, verdict.look, look, eyes_, workers_);
    divider.look_into(AreaGrid(verdict, look).cells(), sampling_.finest);
    BetweenFound found{{}, std::min(sampling_.step, divider.smallest.value_or(sampling_.step))};
    found.open = most_doubtful(std::move(divider.open));
    return found;
}

} // namespace glim
