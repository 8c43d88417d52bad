#include "judgement/see.h"

#include "judgement/verdict.h"
#include "machine/stop.h"
#include "visibility/visible_toward.h"

#include <algorithm>

namespace glim {

namespace {

/// What takes less than this does not shape the shadow's rim.
constexpr Area least_taken = square_millimetres(0.01);

std::vector<Direction> directions_to_prove(const Plan& plan, std::size_t place)
{
    const LampLook& look = plan.looks[place];
    std::vector<Direction> directions;
    for (std::size_t at = 0; at < look.toward.size(); ++at)
        if (plan.certify[place][at])
            directions.push_back(direction_of(look.toward[at], look.frame));
    return directions;
}

std::vector<std::size_t> undecided_directions(const LampVerdict& verdict)
{
    std::vector<std::size_t> at;
    for (const DirectionVerdict& d : verdict.directions)
        if (d.outcome == Outcome::undecided)
            at.push_back(d.at);
    return at;
}

template <class Act>
void for_each_applying(const Plan& plan, const Act& act)
{
    for (const AskedCheck& check : plan.checks)
        for (const AskedRow& row : check.rows) {
            for (const auto* list : {&row.lamps, &row.together})
                for (const Asked& asked : *list)
                    if (looks_in_directions(*row.row, asked))
                        act(*row.row, asked);
        }
}

} // namespace

Eyes::Eyes(const Study& study, const PreparedScene& scene, const Plan& plan, const Workers& workers)
    : study_(study)
{
    for (std::size_t look = 0; look < plan.looks.size(); ++look) {
        std::vector<Eye> eyes;
        const std::vector<Direction> proved = directions_to_prove(plan, look);
        if (!plan.looks[look].toward.empty())
            for (const LampStanding& lamp : plan.standings[look]) {
                eyes.push_back(eye_of(scene, lamp, proved, workers));
                eyes.back().shining = shining(study, lamp, plan.looks[look].axis);
            }
        Length widest;
        for (const Eye& eye : eyes)
            for (const Standing& s : eye.obstacles)
                widest = std::max(widest, study.surfaces[s.surface].chord.error);
        eyes_.push_back(std::move(eyes));
        widest_chord_.push_back(widest);
    }
}

Eyes::Eye Eyes::eye_of(const PreparedScene& scene, const LampStanding& lamp,
                       const std::vector<Direction>& proved, const Workers& workers) const
{
    LampView view = scene.view_of(lamp, study_.sampling);
    std::optional<Certificate> certificate;
    if (!proved.empty())
        certificate.emplace(scene.certificate_of(lamp, view, proved, workers.silent()));
    Length lit_chord;
    for (const SurfaceId s : study_.lamps[lamp.lamp].emits)
        lit_chord = std::max(lit_chord, study_.surfaces[s].chord.error);
    return {std::move(view),
            std::move(certificate),
            scene.exact_view_of(lamp, study_.sampling.touch),
            scene.obstacles_of(lamp),
            lit_chord,
            std::nullopt};
}

void Eyes::see(Plan& plan, const Workers& workers) const
{
    std::vector<Task> tasks;
    for (std::size_t l = 0; l < plan.looks.size(); ++l) {
        LampLook& look = plan.looks[l];
        look.seen.assign(look.toward.size(), {});
        look.exact.assign(look.toward.size(), std::nullopt);
        look.exact_hidden.assign(look.toward.size(), std::nullopt);
        look.mesh_error.assign(look.toward.size(), {});
        if (look.light)
            look.light->toward.assign(look.toward.size(), {});
        for (std::size_t at = 0; at < look.toward.size(); ++at)
            tasks.push_back({l, at});
    }
    plan.narrowed.assign(plan.looks.size(), {});
    see(plan, tasks, workers);
    prove_what_was_missed(plan, workers);
}

void Eyes::see(Plan& plan, const std::vector<Task>& tasks, const Workers& workers) const
{
    const bool whole = for_each_index(tasks.size(), workers,
                                      [&](std::size_t i, unsigned) { see(plan, tasks[i]); });
    if (!whole)
        throw Stopped();
}

void Eyes::see(Plan& plan, const Task& task) const
{
    const auto [place, at] = task;
    LampLook& look = plan.looks[place];
    const Direction toward = direction_of(look.toward[at], look.frame);
    SeenArea sum;
    LightToward light{.whole = Intensity(), .left = {}};
    const bool visible_only = !plan.visible_only.empty() && plan.visible_only[place];
    for (const Eye& eye : eyes_[place]) {
        const Certificate* certificate =
            plan.certify[place][at] && eye.certificate ? &*eye.certificate : nullptr;
        const SeenArea seen = visible_only && certificate == nullptr
                                  ? visible_toward(eye.view, toward)
                                  : seen_toward(eye.view, toward, certificate);
        if (look.light)
            add_light(light, *eye.shining, look.toward[at], seen);
        sum += seen;
    }
    look.seen[at] = sum;
    const bool narrowed =
        look.exact[at] || (at < plan.narrowed[place].size() && plan.narrowed[place][at]);
    look.mesh_error[at] =
        narrowed ? mesh_error(place, sum, chord_of_takers(place, toward)) : mesh_error(place, sum);
    if (look.light)
        look.light->toward[at] = light;
}

void Eyes::see_more(Plan& plan, Asked& asked, const std::vector<Bearing>& toward,
                    const Workers& workers) const
{
    LampLook& look = plan.looks[asked.look];
    std::vector<Task> tasks;
    for (const Bearing& b : toward) {
        tasks.push_back({asked.look, look.toward.size()});
        asked.at.push_back(look.toward.size());
        look.toward.push_back(b);
        plan.certify[asked.look].push_back(true);
    }
    look.seen.resize(look.toward.size());
    look.exact.resize(look.toward.size());
    look.exact_hidden.resize(look.toward.size());
    look.mesh_error.resize(look.toward.size());
    if (look.light)
        look.light->toward.resize(look.toward.size());
    see(plan, tasks, workers.silent());
}

void Eyes::prove_what_was_missed(Plan& plan, const Workers& workers) const
{
    std::vector<Task> tasks;
    for_each_applying(plan, [&](const RuleRow& row, const Asked& asked) {
        const auto* least = std::get_if<LeastArea>(&row.criterion);
        const LampLook& look = plan.looks[asked.look];
        const bool counts = least && std::any_of(asked.at.begin(), asked.at.end(), [&](auto at) {
                                const SeenArea& seen = look.seen[at];
                                return seen.certified && seen.low < least->area &&
                                       seen.low + seen.missed >= least->area;
                            });
        if (!counts || std::none_of(asked.at.begin(), asked.at.end(),
                                    [&](auto at) { return plan.certify[asked.look][at]; }))
            return;
        add_unproved(tasks, plan, asked);
    });
    see(plan, tasks, workers.silent());
}

void Eyes::add_unproved(std::vector<Task>& tasks, Plan& plan, const Asked& asked)
{
    for (const std::size_t at : asked.at)
        if (!plan.certify[asked.look][at]) {
            plan.certify[asked.look][at] = true;
            tasks.push_back({asked.look, at});
        }
}

bool Eyes::prove_what_may_be_met(const RuleRow& row, const Asked& asked, Plan& plan,
                                 const Workers& workers) const
{
    if (!must_be_certified(row) ||
        !may_be_met(verdict_of(row, asked, plan.looks[asked.look], study_.sampling)))
        return false;
    std::vector<Task> tasks;
    add_unproved(tasks, plan, asked);
    see(plan, tasks, workers.silent());
    return !tasks.empty();
}

void Eyes::ask_exactly(LampLook& look, std::size_t place, const std::vector<std::size_t>& at,
                       bool hidden_too, const Workers& workers) const
{
    const Workers quiet = workers.silent();
    // Few directions are shared out by their facets, many one a thread. The bits are the same.
    if (at.size() < quiet.count()) {
        for (const std::size_t one : at)
            ask_exactly(look, place, one, hidden_too, quiet);
        return;
    }
    const Workers alone{.threads = 1, .stop = workers.stop, .progress = {}};
    const bool whole = for_each_index(at.size(), quiet, [&](std::size_t i, unsigned) {
        ask_exactly(look, place, at[i], hidden_too, alone);
    });
    if (!whole)
        throw Stopped();
}

void Eyes::ask_exactly(LampLook& look, std::size_t place, std::size_t at, bool hidden_too,
                       const Workers& workers) const
{
    const Direction toward = direction_of(look.toward[at], look.frame);
    ExactArea visible;
    ExactHidden hidden;
    for (const Eye& eye : eyes_[place]) {
        const ExactArea exact = eye.exact.toward(toward, workers);
        visible.visible += exact.visible;
        visible.rounding += exact.rounding;
        if (!hidden_too)
            continue;
        const ExactHidden more = eye.exact.hidden_toward(toward, workers);
        hidden.hidden += more.hidden;
        hidden.rounding += more.rounding;
    }
    look.exact[at] = visible;
    if (hidden_too)
        look.exact_hidden[at] = hidden;
    look.mesh_error[at] = mesh_error(place, look.seen[at], chord_of_takers(place, toward));
}

void Eyes::settle(const RuleRow& row, const Asked& asked, Plan& plan, const Workers& workers) const
{
    LampLook& look = plan.looks[asked.look];
    prove_what_may_be_met(row, asked, plan, workers);
    const LampVerdict first = verdict_of(row, asked, look, study_.sampling);
    if (first.outcome == Outcome::undecided)
        narrow_mesh_errors(plan, asked.look, undecided_directions(first), workers);
    // Each round asks or proves at least one direction that was not asked or proved, so it ends.
    for (;;) {
        const auto hanging =
            still_hanging(row, verdict_of(row, asked, look, study_.sampling), look);
        if (!hanging.empty())
            ask_exactly(look, asked.look, hanging, must_be_certified(row), workers);
        else if (!prove_what_may_be_met(row, asked, plan, workers))
            return;
    }
}

void Eyes::narrow_mesh_errors(Plan& plan, std::size_t place, std::vector<std::size_t> at,
                              const Workers& workers) const
{
    LampLook& look = plan.looks[place];
    std::vector<bool>& narrowed = plan.narrowed[place];
    narrowed.resize(look.toward.size());
    std::erase_if(at, [&](std::size_t one) { return narrowed[one]; });
    const bool whole = for_each_index(at.size(), workers.silent(), [&](std::size_t i, unsigned) {
        const Direction toward = direction_of(look.toward[at[i]], look.frame);
        look.mesh_error[at[i]] =
            mesh_error(place, look.seen[at[i]], chord_of_takers(place, toward));
    });
    if (!whole)
        throw Stopped();
    for (const std::size_t one : at)
        narrowed[one] = true;
}

void Eyes::settle(Plan& plan, const Workers& workers) const
{
    for_each_applying(
        plan, [&](const RuleRow& row, const Asked& asked) { settle(row, asked, plan, workers); });
}

SeenArea Eyes::seen(std::size_t look, const Bearing& bearing, const LampFrame& frame) const
{
    SeenArea sum;
    for (const Eye& eye : eyes_[look])
        sum += seen_toward(eye.view, direction_of(bearing, frame));
    return sum;
}

SeenArea Eyes::visible(std::size_t look, const Bearing& bearing, const LampFrame& frame) const
{
    SeenArea sum;
    for (const Eye& eye : eyes_[look])
        sum += visible_toward(eye.view, direction_of(bearing, frame));
    return sum;
}

Area Eyes::mesh_error(std::size_t look, const SeenArea& seen) const
{
    return mesh_error(look, seen, widest_chord_[look]);
}

/// A rim moves by no more than the chord errors of what throws it and of what it falls on; the lit
/// face's own outline by its own.
Area Eyes::mesh_error(std::size_t look, const SeenArea& seen, Length obstacles) const
{
    Length lit;
    for (const Eye& eye : eyes_[look])
        lit = std::max(lit, eye.lit_chord);
    return seen.rim * (obstacles + lit) + seen.outline * lit;
}

Length Eyes::chord_of_takers(std::size_t look, const Direction& toward) const
{
    Length widest;
    for (const SurfaceTaken& taker : taken(look, toward))
        if (taker.area.sum() > least_taken)
            widest = std::max(widest, study_.surfaces[taker.standing.surface].chord.error);
    return widest;
}

std::vector<SurfaceTaken> Eyes::taken(std::size_t look, const Direction& toward) const
{
    std::vector<SurfaceTaken> taken;
    for (const Eye& eye : eyes_[look])
        add_blame(taken, eye.obstacles, blame_toward(eye.view, toward));
    return taken;
}

} // namespace glim
