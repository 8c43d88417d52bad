#include "remedy/lens_gauge.h"

#include "judgement/surface_taken.h"
#include "machine/stop.h"
#include "visibility/sweep.h"

#include <algorithm>
#include <limits>

namespace glim {

namespace {

/// What takes less than this does not shape the shadow's rim; as checks have it.
constexpr Area least_taken = square_millimetres(0.01);

constexpr Angle step_around = degrees(15);

} // namespace

LensGauge::LensGauge(StudyWithLamp with)
    : lamp_(with.lamp), lens_(with.lens), session_(std::move(with.study))
{
}

void LensGauge::put(TriangleMesh lens) { session_.replace(lens_, std::move(lens)); }

/// As Eyes have it, with the chord errors of what is in the way there.
Area LensGauge::surely_in_view(const LampView& view, const std::vector<Standing>& obstacles,
                               const Direction& toward) const
{
    const SeenArea seen = seen_toward(view, toward);
    const Study& study = session_.study();
    const Length own = study.surfaces[lens_].chord.error;
    Length widest;
    if (seen.rim > Length()) {
        std::vector<SurfaceTaken> taken;
        add_blame(taken, obstacles, blame_toward(view, toward));
        for (const SurfaceTaken& taker : taken)
            if (taker.area.sum() > least_taken)
                widest = std::max(widest, study.surfaces[taker.standing.surface].chord.error);
    }
    return seen.low - (seen.rim * (widest + own) + seen.outline * own);
}

std::vector<double> LensGauge::met_shares(std::span<const NeedLook> looks,
                                          std::span<const AreaNeed> needs, Length feature,
                                          const Workers& workers) const
{
    std::vector<double> shares(needs.size(), std::numeric_limits<double>::infinity());
    const bool twin = session_.study().lamps[lamp_].paired && !session_.scene().is_symmetric();
    Sampling sampling = session_.study().sampling;
    sampling.feature = feature;
    for (const bool far : {false, true}) {
        if (far && !twin)
            continue;
        const LampStanding standing{lamp_, far, Obstacles::all};
        const LampView view = session_.scene().view_of(standing, sampling);
        const auto obstacles = session_.scene().obstacles_of(standing);
        const Workers silent = workers.silent();
        if (!for_each_index(needs.size(), silent, [&](std::size_t i, unsigned) {
                if (needs[i].area <= Area())
                    return;
                const NeedLook& look = looks[needs[i].look];
                const Area sure =
                    surely_in_view(view, obstacles, far ? look.twin_toward : look.toward);
                shares[i] = std::min(shares[i], sure / needs[i].area);
            }))
            throw Stopped();
    }
    return shares;
}

Area LensGauge::in_sight() const
{
    const Study& study = session_.study();
    const LampView view = session_.scene().view_of({lamp_, false, Obstacles::all}, study.sampling);
    const LampFrame level{study.vehicle.forward, study.vehicle.left(), study.vehicle.up};
    Area sum;
    int count = 0;
    for (Angle h = degrees(-180) + step_around; h <= degrees(180); h += step_around) {
        sum += seen_toward(view, direction_of({h, Angle()}, level)).visible;
        ++count;
    }
    return sum / count;
}

} // namespace glim
