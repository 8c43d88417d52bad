#include "judgement/tolerance_study.h"

#include "judgement/build_runs.h"
#include "judgement/build_statistics.h"
#include "judgement/contributors.h"
#include "judgement/deciding_directions.h"
#include "judgement/needed_tolerance.h"
#include "judgement/see.h"
#include "judgement/tolerance_tally.h"
#include "judgement/worst_stack.h"
#include "machine/stop.h"
#include "model/asked_checks.h"

#include <algorithm>

namespace glim {

namespace {

/// Builds looked at over the whole field afterwards.
constexpr std::size_t proof_builds = 128;

Plan plan_as_drawn(const Session& session, const ToleranceTask& task, const Workers& workers)
{
    const std::vector<std::size_t> checks = asked_checks(session.study(), task.checks);
    Plan plan = plan_of(session.study(), session.scene(), checks, task.step);
    for (std::vector<bool>& certify : plan.certify)
        certify.assign(certify.size(), false);
    ask_what_outcomes_need(plan);
    Eyes(session.study(), session.scene(), plan, workers).see(plan, workers);
    return plan;
}

/// What is asked about one tolerance may go further than the study's own.
std::vector<double> scale_of(const Study& study)
{
    std::vector<double> scale(study.variation.tolerances.size(), 1.0);
    if (study.variation.task.asked)
        scale[*study.variation.task.asked] = most_tolerance_factor;
    return scale;
}

class ToleranceRun {
public:
    ToleranceRun(const Session& session, const Workers& workers)
        : study_(session.study()), task_(study_.variation.task), workers_(workers),
          moves_(study_, build_factors(study_.variation.tolerances)),
          widest_(moves_.widest(scale_of(study_))),
          parts_(study_, session.scene(), moves_, widest_, workers),
          looks_({study_, session.scene(), moves_, parts_, widest_},
                 plan_as_drawn(session, task_, workers.silent()), workers),
          design_(study_.variation.tolerances, moves_.factors(), task_),
          book_(looks_, study_, session.scene()), progress_(workers, pieces())
    {
        for (const Followed& f : looks_.followed())
            whole_field_.push_back(looks_.asked_of(f).at);
    }

    ToleranceFindings find()
    {
        found_.as_drawn = as_drawn();
        found_.factors = moves_.factors();
        found_.contributors = contributors_of(study_, found_.factors);
        found_.profile_step = parts_.widest_step();
        choose_directions();
        count_builds();
        stack_up();
        keep_what_decided();
        share_out_variance();
        ask_how_large();
        prove_directions();
        found_.partial = workers_.stop.stop_requested();
        return std::move(found_);
    }

private:
    bool varies() const { return !moves_.factors().empty(); }
    std::size_t builds() const { return varies() ? design_.builds() : 1; }
    std::size_t pieces() const
    {
        const std::size_t k = moves_.factors().size();
        const std::size_t corners = k < 10 ? std::size_t{1} << k : 3 * k * looks_.followed().size();
        const std::size_t mixtures = contributors_of(study_, moves_.factors()).size() + 1;
        return builds() + corners + design_.mixed_builds() * mixtures +
               (task_.asked ? NeededToleranceSearch::most_builds(design_) : 0) + proof_builds;
    }

    Findings as_drawn() const
    {
        Findings findings;
        findings.study_file = study_.file;
        findings.title = study_.title;
        findings.sampling = study_.sampling;
        findings.sampling.step = task_.step;
        findings.checks = book_.as_drawn();
        findings.looks = looks_.plan().looks;
        return findings;
    }

    void choose_directions()
    {
        found_.whole_field = task_.directions == 0;
        std::vector<std::vector<std::size_t>> at = whole_field_;
        if (!found_.whole_field && varies())
            at = deciding_directions(looks_, {moves_, study_, design_}, task_.directions,
                                     workers_.silent());
        looks_.keep_only(at);
        for (const auto& each : at)
            found_.directions = std::max(found_.directions, each.size());
    }

    BuildRuns run(std::size_t count, const DeviationsOf& deviations)
    {
        return run_builds(looks_, count, deviations, progress_.stage(count));
    }

    void count_builds()
    {
        runs_ = run(builds(), [&](std::size_t i) { return design_.build(i); });
        const std::vector<double> drawn(moves_.factors().size());
        BuiltLooks::Bench bench = looks_.bench(RimSearch::close);
        ToleranceTally tally(looks_, book_, looks_.look(bench, drawn));
        tally.add_to(found_, runs_);
        if (found_.builds == 0)
            throw Stopped();
        if (!varies()) // one build stands for all
            make_certain(found_);
    }

    bool goes_on() const { return varies() && !workers_.stop.stop_requested(); }

    void stack_up()
    {
        if (!goes_on())
            return;
        std::vector<double> limits;
        for (const BuildFactor& f : moves_.factors())
            limits.push_back(stack_limit(study_.variation.tolerances[f.tolerance], f.way));
        const auto stacks = worst_stacks(looks_, limits, slopes(), progress_.stage(0));
        for (std::size_t v = 0; v < stacks.size(); ++v)
            found_.verdicts[v].worst = stacks[v];
    }

    /// How each followed verdict's standing goes with each factor, by the builds counted.
    std::vector<std::vector<double>> slopes() const
    {
        std::vector<std::vector<double>> slopes(looks_.followed().size(),
                                                std::vector<double>(moves_.factors().size()));
        for (std::size_t i = 0; i < runs_.size(); ++i) {
            const std::vector<double> by = design_.build(i);
            for (std::size_t v = 0; v < slopes.size() && !runs_[i].empty(); ++v) {
                const ToleratedVerdict& verdict = found_.verdicts[v];
                const double off = in_mm2(runs_[i][v].figure) - verdict.spread.mean;
                for (std::size_t f = 0; f < by.size(); ++f)
                    slopes[v][f] += (verdict.of_area ? off : -off) * by[f];
            }
        }
        return slopes;
    }

    /// What comes after the counting is looked at from where some build was worst, or the worst
    /// stack-up: of the deciding directions mostly a few.
    void keep_what_decided()
    {
        if (!goes_on())
            return;
        std::vector<std::vector<std::size_t>> at(looks_.followed().size());
        for (std::size_t v = 0; v < at.size(); ++v) {
            const std::vector<Bearing>& toward = looks_.look_of(looks_.followed()[v]).toward;
            std::vector<bool> decided(toward.size());
            for (const std::vector<BuildLook>& run : runs_)
                decided[run[v].at] = true;
            for (std::size_t i = 0; i < toward.size(); ++i)
                if (decided[i] ||
                    (found_.verdicts[v].worst && found_.verdicts[v].worst->toward == toward[i]))
                    at[v].push_back(i);
        }
        looks_.keep_only(at);
    }

    void share_out_variance()
    {
        if (!goes_on())
            return;
        const std::size_t count = design_.mixed_builds();
        const BuildRuns other = run(count, [&](std::size_t i) { return design_.other(i); });
        BuildRuns first;
        for (std::size_t i = 0; i < count; ++i)
            first.push_back(runs_[design_.mixed_place(i)]);
        std::vector<BuildRuns> mixed;
        for (const Contributor& c : found_.contributors)
            mixed.push_back(run(count, [&](std::size_t i) { return design_.mixed(i, c.factors); }));
        if (workers_.stop.stop_requested())
            return;
        found_.builds_for_contributions = count * (mixed.size() + 2);
        for (std::size_t v = 0; v < found_.verdicts.size(); ++v)
            found_.verdicts[v].contributions =
                variance_shares({first, other, mixed}, v, BuildDesign::shifts);
    }

    void ask_how_large()
    {
        if (!goes_on() || !task_.asked)
            return;
        const NeededToleranceSearch search(looks_, design_, book_,
                                           study_.variation.tolerances.size());
        const Workers stage = progress_.stage(NeededToleranceSearch::most_builds(design_)).silent();
        found_.needed = search.find(task_, stage);
    }

    void prove_directions()
    {
        if (!goes_on() || found_.whole_field)
            return;
        const std::size_t count = std::min(proof_builds, builds());
        const std::size_t apart = builds() / count;
        looks_.keep_only(whole_field_);
        const BuildRuns whole = run(count, [&](std::size_t i) { return design_.build(i * apart); });
        BuildRuns some;
        for (std::size_t i = 0; i < count; ++i)
            some.push_back(runs_[i * apart]);
        found_.direction_proof = proof_of_directions(looks_, some, whole);
    }

    const Study& study_;
    const ToleranceTask& task_;
    const Workers& workers_;
    BuildMoves moves_;
    Extents widest_;
    OffsetParts parts_;
    BuiltLooks looks_;
    BuildDesign design_;
    OutcomeBook book_;
    StagedProgress progress_;
    std::vector<std::vector<std::size_t>> whole_field_;
    BuildRuns runs_;
    ToleranceFindings found_;
};

} // namespace

ToleranceFindings study_tolerances(const Session& session, const Workers& workers)
{
    return ToleranceRun(session, workers).find();
}

} // namespace glim
