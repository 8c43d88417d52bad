#include "visibility/hidden_bounds.h"

#include <cmath>

namespace glim {

namespace {

/// How something hides a cell, as far as corners and marks tell.
enum class Hides { nowhere, in_part, wholly };

Hides hides(const LitLattice::Cell& cell, const LitLook::Hidden& hidden, bool marked)
{
    const int dark = hidden[cell.corners[0]] + hidden[cell.corners[1]] + hidden[cell.corners[2]];
    if (marked || (dark != 0 && dark != 3))
        return Hides::in_part;
    return dark == 0 ? Hides::nowhere : Hides::wholly;
}

/// Where all corners are dark the outline runs in the shadow of something else and draws no rim.
double rim_mm(const LitLook& look, const LitLattice::Cell& cell, const HiddenCornersOf& hidden,
              double area)
{
    switch (hides(cell, hidden.all, false)) {
    case Hides::in_part:
        return look.rim_across_mm(cell, hidden.rim);
    case Hides::nowhere:
        return std::sqrt(2 * area);
    case Hides::wholly:
        break;
    }
    return 0;
}

} // namespace

HiddenBounds hidden_by_others(const LitLook& look, const HiddenCornersOf& hidden,
                              std::span<const std::uint8_t> marks)
{
    HiddenBounds sum;
    const std::vector<LitLattice::Cell>& cells = look.lattice().cells();
    for (std::size_t c = 0; c < cells.size(); ++c) {
        const LitLattice::Cell& cell = cells[c];
        if (!look.faces(cell))
            continue;
        const std::uint8_t mark = marks.empty() ? 0 : marks[c];
        const double area = look.projected_mm2(cell);
        if (hides(cell, hidden.all, mark != 0) == Hides::in_part)
            sum.rim_mm += rim_mm(look, cell, hidden, area);
        const Hides others = hides(cell, hidden.others, (mark & marked_by_others) != 0);
        if (others == Hides::nowhere)
            continue;
        const Hides approved = hides(cell, hidden.approved, (mark & marked_by_approved) != 0);
        if (approved == Hides::wholly)
            continue;
        sum.high_mm2 += area;
        if (others == Hides::wholly && approved == Hides::nowhere)
            sum.low_mm2 += area;
    }
    return sum;
}

} // namespace glim
