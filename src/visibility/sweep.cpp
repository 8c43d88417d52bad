#include "visibility/sweep.h"

#include "machine/stop.h"
#include "visibility/hidden_bounds.h"
#include "visibility/visible_toward.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

bool any(std::span<const std::uint8_t> flags)
{
    return std::any_of(flags.begin(), flags.end(), [](std::uint8_t flag) { return flag != 0; });
}

/// Two standard deviations of the mixed cells, each taken as uniform between dark and lit, and the
/// area of one cell's square for what may have slipped between corners.
double expected_error_mm2(const LitLook::Shares& shares, Length pitch)
{
    if (shares.mixed == 0)
        return 0;
    return 2 * std::sqrt(shares.squared_mixed / 12) + in_mm2(pitch * pitch);
}

SeenArea nothing_in_the_way(const LampView& view, const LitLook& look)
{
    SeenArea seen;
    seen.lens = seen.approved = seen.visible = seen.low = seen.high =
        square_millimetres(look.bare_mm2());
    seen.outline = view.outline.toward(look.toward());
    return seen;
}

void set_visible(SeenArea& seen, const LitLook::Shares& shares, Length pitch)
{
    // Sums in another order differ in the last bits; the areas' order must not.
    const double visible = std::min(in_mm2(seen.lens), shares.seen());
    seen.visible = square_millimetres(visible);
    seen.low = square_millimetres(std::min(visible, shares.whole));
    seen.high =
        square_millimetres(std::clamp(shares.whole + shares.mixed, visible, in_mm2(seen.lens)));
    seen.expected_error = square_millimetres(expected_error_mm2(shares, pitch));
    seen.missed = square_millimetres(shares.missed);
}

/// `approved_mm2` is sampled; where bounds are proved, it must not leave them.
void set_hidden(SeenArea& seen, const HiddenBounds& hidden, double approved_mm2)
{
    const double visible = in_mm2(seen.visible);
    const double least = seen.certified ? visible + hidden.low_mm2 : visible;
    const double most = seen.certified ? visible + hidden.high_mm2 : in_mm2(seen.lens);
    seen.approved =
        square_millimetres(std::min(std::clamp(approved_mm2, least, most), in_mm2(seen.lens)));
    seen.hidden_low = square_millimetres(hidden.low_mm2);
    seen.hidden_high = square_millimetres(hidden.high_mm2);
    seen.rim = millimetres(hidden.rim_mm);
}

/// What the lamp itself and its approved parts leave: plain, and weighed by its brightness.
struct Approved {
    double mm2, weighed_mm2;
};

Approved approved_of(const LampView& view, const LitLook& look, const LitLook::Hidden& hidden)
{
    const bool uniform = view.brightness.empty();
    if (!any(hidden))
        return {look.bare_mm2(), uniform ? 0 : look.weighed_bare_mm2(view.brightness)};
    const LitLook::Rim rim = look.rim(view.approved, hidden);
    return {look.shares(hidden, rim).seen(),
            uniform ? 0 : look.weighed_mm2(hidden, rim, view.brightness)};
}

/// The last bits of sums in another order must not make the visible more than the approved.
void set_weighed(SeenArea& seen, double approved_mm2, double visible_mm2)
{
    seen.weighed_approved = square_millimetres(approved_mm2);
    seen.weighed_visible = square_millimetres(std::min(approved_mm2, visible_mm2));
}

void set_uniform(SeenArea& seen)
{
    seen.weighed_approved = seen.approved;
    seen.weighed_visible = seen.visible;
}

SeenArea areas_toward(const LampView& view, const Direction& toward, const Certificate* certificate)
{
    const LitLook look(view, toward);
    SeenArea seen = nothing_in_the_way(view, look);
    if (!view.brightness.empty() && look.bare_mm2() > 0)
        seen.weighed_approved = seen.weighed_visible =
            square_millimetres(look.weighed_bare_mm2(view.brightness));
    if (look.bare_mm2() == 0)
        return seen;
    seen.certified = certificate != nullptr && certificate->covers(toward);
    const CellMarks marks = seen.certified ? certificate->marks(look) : CellMarks{};
    const LitLook::Hidden hidden = look.hidden_by(view.all);
    if (!any(hidden) && !any(marks))
        return seen;

    const LitLook::Rim rim = look.rim(view.all, hidden);
    set_visible(seen, look.shares(hidden, rim, marks), view.lattice.pitch());
    // What nothing hides, neither of them hides.
    const LitLook::Hidden approved = look.hidden_by(view.approved, &hidden);
    const LitLook::Hidden others = look.hidden_by(view.others, &hidden);
    const Approved left = approved_of(view, look, approved);
    set_hidden(seen, hidden_by_others(look, {hidden, approved, others, rim}, marks), left.mm2);
    if (!view.brightness.empty())
        set_weighed(seen, left.weighed_mm2, look.weighed_mm2(hidden, rim, view.brightness));
    return seen;
}

} // namespace

SeenArea seen_toward(const LampView& view, const Direction& toward, const Certificate* certificate)
{
    SeenArea seen = areas_toward(view, toward, certificate);
    if (view.brightness.empty())
        set_uniform(seen);
    return seen;
}

SeenArea visible_toward(const LampView& view, const Direction& toward)
{
    const LitLook look(view, toward);
    SeenArea seen = nothing_in_the_way(view, look);
    if (look.bare_mm2() == 0)
        return seen;
    seen.certified = false;
    const LitLook::Hidden hidden = look.hidden_by(view.all);
    if (!any(hidden))
        return seen;
    const LitLook::Rim rim = look.rim(view.all, hidden);
    set_visible(seen, look.shares(hidden, rim), view.lattice.pitch());
    const LitLook::Hidden not_asked(hidden.size());
    seen.rim = millimetres(hidden_by_others(look, {hidden, not_asked, not_asked, rim}, {}).rim_mm);
    return seen;
}

std::vector<SeenArea> sweep(const LampView& view, std::span<const Direction> directions,
                            const Workers& workers, const Certificate* certificate)
{
    std::vector<SeenArea> seen(directions.size());
    const bool whole = for_each_index(directions.size(), workers, [&](std::size_t i, unsigned) {
        seen[i] = seen_toward(view, directions[i], certificate);
    });
    if (!whole)
        throw Stopped();
    return seen;
}

} // namespace glim
