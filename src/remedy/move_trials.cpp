#include "remedy/move_trials.h"

#include "model/asked_checks.h"

#include <algorithm>

namespace glim {

namespace {

/// Ways are scanned and mapped on this grid of directions, and refined on that, unless the study's
/// own is coarser; corners of fields are on every grid.
constexpr Angle scan_step = degrees(15);
constexpr Angle refine_step = degrees(5);

/// While moves are scanned, so many rays across the lamp are enough.
constexpr double scan_rays_across = 32;

/// From the lamp to its limit a way is scanned in so many steps.
constexpr int scan_steps = 12;

/// The quick look halves down to so many times the accuracy wanted.
constexpr double coarser = 4;

/// The same study with fewer rays, for scanning.
Study scanned(Study study, LampId lamp)
{
    Box box;
    for (const SurfaceId s : study.lamps[lamp].emits)
        for (const Point& p : study.surfaces[s].mesh.points)
            box.add(p);
    const Length coarse = millimetres(box.size().maxCoeff() / scan_rays_across);
    study.sampling.feature = std::max(study.sampling.feature, coarse);
    return study;
}

} // namespace

MoveTrials::MoveTrials(const Study& study, const MoveLampTask& task, const Workers& workers)
    : study_(study), workers_(workers), checks_(asked_checks(study, task.checks)),
      lamp_(study, lamp_of(study, task)), scan_(scanned(study, lamp_.lamp()))
{
    workers_.progress = {};
}

Angle MoveTrials::step() const { return std::max(study_.sampling.step, refine_step); }

QuickAnswer MoveTrials::quick(const LampMove& move)
{
    return look(move, {std::max(study_.sampling.step, scan_step)});
}

bool MoveTrials::passes(const LampMove& move)
{
    return look(move, {step(), true}).outcome == Outcome::met;
}

QuickAnswer MoveTrials::look(const LampMove& move, const QuickLook& how)
{
    ++tried_;
    lamp_.place(scan_, move);
    return quick_check(scan_, checks_, how, workers_);
}

std::vector<Outcome> MoveTrials::checked(const LampMove& move, OfFailures asked)
{
    ++tried_;
    if (!exact_)
        exact_ = std::make_unique<Session>(study_);
    lamp_.place(*exact_, move);
    return outcomes_of(*exact_, checks_, asked, workers_);
}

std::optional<double> MoveTrials::quick_share(const LampMove& whole, double most, double accuracy)
{
    double fails = 0;
    for (int i = 1; i <= scan_steps; ++i) {
        double passes_at = most * i / scan_steps;
        if (!passes_quickly(passes_at * whole)) {
            fails = passes_at;
            continue;
        }
        while (passes_at - fails > coarser * accuracy) {
            const double middle = (fails + passes_at) / 2;
            (passes_quickly(middle * whole) ? passes_at : fails) = middle;
        }
        return passes_at;
    }
    return std::nullopt;
}

std::optional<double> MoveTrials::refined(const LampMove& whole, double share, double most,
                                          double accuracy)
{
    double fails = 0, passes_at = share, stride = coarser * accuracy;
    for (; !passes(passes_at * whole); stride *= 2) {
        fails = passes_at;
        passes_at += stride;
        if (passes_at > most)
            return std::nullopt;
    }
    for (; fails == 0 && passes_at > stride; stride *= 2) {
        if (!passes((passes_at - stride) * whole))
            fails = passes_at - stride;
        else
            passes_at -= stride;
    }
    while (passes_at - fails > accuracy) {
        const double middle = (fails + passes_at) / 2;
        (passes(middle * whole) ? passes_at : fails) = middle;
    }
    return passes_at;
}

} // namespace glim
