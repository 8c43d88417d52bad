#include "visibility/sweep.h"

#include "machine/stop.h"
#include "visibility/lit_look.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace glim {

namespace {

bool any(const std::vector<std::uint8_t>& hidden)
{
    return std::find(hidden.begin(), hidden.end(), 1) != hidden.end();
}

/// Two standard deviations of the mixed cells, each taken as uniform between dark and lit, and the
/// area of one cell's square for what may have slipped between corners.
double expected_error_mm2(const LitLook::Shares& shares, Length pitch)
{
    if (shares.mixed == 0)
        return 0;
    return 2 * std::sqrt(shares.squared_mixed / 12) + in_mm2(pitch * pitch);
}

/// What the lamp itself and its approved parts leave; only corners that something hides are asked.
double approved_mm2(const LampView& view, const LitLook& look,
                    const std::vector<std::uint8_t>& hidden)
{
    const auto hidden_at_approval = look.hidden_by(view.approved, &hidden);
    if (!any(hidden_at_approval))
        return look.bare_mm2();
    return look.shares(view.approved, hidden_at_approval).seen();
}

} // namespace

SeenArea seen_toward(const LampView& view, const Direction& toward)
{
    const LitLook look(view, toward);
    const double bare = look.bare_mm2();
    SeenArea seen;
    seen.lens = seen.approved = seen.visible = seen.low = seen.high = square_millimetres(bare);
    if (bare == 0)
        return seen;
    const auto hidden = look.hidden_by(view.all);
    if (!any(hidden))
        return seen;

    const LitLook::Shares shares = look.shares(view.all, hidden);
    const double approved = std::min(bare, approved_mm2(view, look, hidden));
    seen.approved = square_millimetres(approved);
    // Sums in another order differ in the last bits; the areas' order must not.
    seen.visible = square_millimetres(std::min(approved, shares.seen()));
    seen.low = square_millimetres(std::min(in_mm2(seen.visible), shares.whole));
    seen.high =
        square_millimetres(std::clamp(shares.whole + shares.mixed, in_mm2(seen.visible), bare));
    seen.expected_error = square_millimetres(expected_error_mm2(shares, view.lattice.pitch()));
    return seen;
}

std::vector<SeenArea> sweep(const LampView& view, std::span<const Direction> directions,
                            const Workers& workers)
{
    std::vector<SeenArea> seen(directions.size());
    const bool whole = for_each_index(directions.size(), workers, [&](std::size_t i, unsigned) {
        seen[i] = seen_toward(view, directions[i]);
    });
    if (!whole)
        throw Stopped();
    return seen;
}

std::vector<TakenArea> taken_toward(const LampView& view, const Direction& toward)
{
    const LitLook look(view, toward);
    const auto hidden = look.hidden_by(view.all);
    const auto corners = look.hidden_corners(hidden);
    const double all_corners =
        std::accumulate(corners.areas_mm2.begin(), corners.areas_mm2.end(), 0.0);
    // Corners stand for whole cells along the rim; together they may take what is hidden, no more.
    const double scale =
        all_corners > 0 ? (look.bare_mm2() - look.shares(view.all, hidden).seen()) / all_corners
                        : 0;
    const PartSets sets = view.all.every_hit(toward, corners.starts);
    std::vector<TakenArea> taken(view.all.part_count());
    std::vector<std::size_t> met;
    for (std::size_t ray = 0; ray < corners.starts.size(); ++ray) {
        met.clear();
        for (std::size_t part = 0; part < taken.size(); ++part)
            if (sets.holds(ray, part))
                met.push_back(part);
        const Area area = square_millimetres(scale * corners.areas_mm2[ray]);
        for (const std::size_t part : met)
            (met.size() == 1 ? taken[part].alone : taken[part].jointly) += area;
    }
    return taken;
}

} // namespace glim
