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

/// A rectangle of directions: least H and V first, then along H, then along V.
using GridCell = std::array<Corner, 4>;

std::vector<GridCell> cells_of(const LampVerdict& verdict, const LampLook& look)
{
    const GridLines lines(verdict, look);
    const auto corner = [&](std::size_t direction) {
        const std::size_t at = verdict.directions[direction].at;
        const Area error = look.exact[at] ? look.exact[at]->rounding : look.seen[at].expected_error;
        return Corner{look.toward[at], look.visible(at), error + look.mesh_error[at]};
    };
    std::vector<GridCell> cells;
    for (const auto& [node, here] : lines.nodes()) {
        const auto right = lines.at({node.v, node.h + 1});
        const auto above = lines.at({node.v + 1, node.h});
        const auto across = lines.at({node.v + 1, node.h + 1});
        if (right && above && across &&
            adjoin(corner(here).toward, corner(*across).toward, verdict.field))
            cells.push_back({corner(here), corner(*right), corner(*above), corner(*across)});
    }
    return cells;
}

/// Whether the area might fall to the threshold between the corners.
bool is_doubtful(const GridCell& cell, Area needed)
{
    const auto [least, most] =
        std::minmax_element(cell.begin(), cell.end(),
                            [](const Corner& a, const Corner& b) { return a.visible < b.visible; });
    const Area change = most->visible - least->visible;
    return change > Area() && least->visible - needed < 2 * change;
}

Angle size_of(const GridCell& cell)
{
    return std::max(cell[3].toward.h - cell[0].toward.h, cell[3].toward.v - cell[0].toward.v);
}

class Subdivider {
public:
    Subdivider(Area needed, std::size_t place, const LampLook& look, const Eyes& eyes, Angle finest)
        : needed_(needed), place_(place), look_(look), eyes_(eyes), finest_(finest)
    {
    }

    void look_into(const GridCell& cell)
    {
        smallest = std::min(smallest.value_or(size_of(cell)), size_of(cell));
        if (size_of(cell) <= finest_ || !is_doubtful(cell, needed_))
            return;
        const auto [a, b, c, d] = cell;
        const Corner ab = between(a, b), ac = between(a, c), bd = between(b, d), cd = between(c, d),
                     centre = between(a, d);
        look_into({a, ab, ac, centre});
        look_into({ab, b, centre, bd});
        look_into({ac, centre, c, cd});
        look_into({centre, bd, cd, d});
    }

    std::vector<Corner> open;
    std::optional<Angle> smallest;

private:
    Corner between(const Corner& a, const Corner& b)
    {
        const Bearing half{(a.toward.h + b.toward.h) / 2, (a.toward.v + b.toward.v) / 2};
        const SeenArea seen = eyes_.seen(place_, half, look_.frame);
        const Corner corner{half, seen.visible,
                            seen.expected_error + eyes_.mesh_error(place_, seen)};
        if (corner.visible - corner.error < needed_)
            open.push_back(corner);
        return corner;
    }

    Area needed_;
    std::size_t place_;
    const LampLook& look_;
    const Eyes& eyes_;
    Angle finest_;
};

bool before(const Bearing& a, const Bearing& b) { return a.v != b.v ? a.v < b.v : a.h < b.h; }

std::vector<Bearing> most_doubtful(std::vector<Corner> open)
{
    std::sort(open.begin(), open.end(), [](const Corner& a, const Corner& b) {
        const Area worst_a = a.visible - a.error, worst_b = b.visible - b.error;
        return worst_a != worst_b ? worst_a < worst_b : before(a.toward, b.toward);
    });
    std::vector<Bearing> toward;
    for (const Corner& corner : open)
        if (toward.size() < most_open &&
            std::find(toward.begin(), toward.end(), corner.toward) == toward.end())
            toward.push_back(corner.toward);
    std::sort(toward.begin(), toward.end(), before);
    return toward;
}

} // namespace

BetweenFound look_between(const RuleRow& row, const LampVerdict& verdict, const LampLook& look,
                          const Eyes& eyes, const Sampling& sampling, const Workers& workers)
{
    const Area needed = std::get<LeastArea>(row.criterion).area;
    const std::vector<GridCell> cells = cells_of(verdict, look);
    std::vector<Subdivider> dividers(cells.size(),
                                     Subdivider(needed, verdict.look, look, eyes, sampling.finest));
    const Workers silent{.threads = workers.threads, .stop = workers.stop, .progress = {}};
    const bool whole = for_each_index(
        cells.size(), silent, [&](std::size_t i, unsigned) { dividers[i].look_into(cells[i]); });
    if (!whole)
        throw Stopped();
    BetweenFound found{{}, sampling.step};
    std::vector<Corner> open;
    for (const Subdivider& d : dividers) {
        open.insert(open.end(), d.open.begin(), d.open.end());
        found.finest_step = std::min(found.finest_step, d.smallest.value_or(sampling.step));
    }
    found.open = most_doubtful(std::move(open));
    return found;
}

} // namespace glim
