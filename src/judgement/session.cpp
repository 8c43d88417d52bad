#include "judgement/session.h"

#include "judgement/explain.h"
#include "judgement/plan.h"
#include "judgement/rule_tree.h"
#include "judgement/see.h"
#include "judgement/verdict.h"

#include <numeric>

namespace glim {

namespace {

/// Each side of the vehicle must have its answer: the worse one stands, the first among equals.
void keep_worse(std::optional<LampVerdict>& kept, LampVerdict other)
{
    if (!kept || std::pair(other.outcome, other.margin) < std::pair(kept->outcome, kept->margin))
        kept = std::move(other);
}

CheckFindings judge(const AskedCheck& asked, const std::vector<LampLook>& looks)
{
    CheckFindings check;
    check.name = asked.check->name;
    check.table = asked.table->name;
    check.regulation = asked.table->regulation;
    check.edition = asked.table->edition;
    check.rule = asked.check->rule;
    if (const Rule* rule = asked.table->rule(check.rule))
        check.rule_title = rule->title;
    else
        check.rule_title = asked.rows.front().row->title;
    for (const AskedRow& row : asked.rows) {
        RowFindings findings{.row = *row.row, .lamps = {}, .together = {}};
        for (const Asked& lamp : row.lamps)
            findings.lamps.push_back(verdict_of(*row.row, lamp, looks[lamp.look]));
        for (const Asked& side : row.together)
            keep_worse(findings.together, verdict_of(*row.row, side, looks[side.look]));
        check.rows.push_back(std::move(findings));
    }
    answer_from_rows(check, *asked.table, looks);
    return check;
}

} // namespace

Session::Session(Study study) : study_(std::move(study)), drawn_lamps_(study_.lamps), scene_(study_)
{
}

std::vector<std::size_t> Session::all_checks() const
{
    std::vector<std::size_t> all(study_.checks.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    return all;
}

void Session::replace(SurfaceId surface, TriangleMesh mesh)
{
    scene_.replace(surface, std::move(mesh));
}

void Session::place(SurfaceId surface, const Placement& placement)
{
    scene_.place(surface, placement);
}

void Session::place(LampId lamp, const Placement& placement)
{
    for (const SurfaceId surface : study_.lamps[lamp].emits)
        scene_.place(surface, placement);
    const Lamp& drawn = drawn_lamps_[lamp];
    if (drawn.centre)
        study_.lamps[lamp].centre = placement(*drawn.centre);
    if (drawn.axis)
        study_.lamps[lamp].axis = placement(*drawn.axis);
}

Findings Session::check(std::span<const std::size_t> checks, Angle step,
                        const Workers& workers) const
{
    Findings findings;
    findings.study_file = study_.file;
    findings.title = study_.title;
    findings.sampling = study_.sampling;
    findings.sampling.step = step;

    Plan plan = plan_of(study_, scene_, checks, step);
    const Eyes eyes(scene_, plan, study_.sampling);
    eyes.see(plan, workers);
    eyes.settle(plan, workers);
    for (const AskedCheck& asked : plan.checks)
        findings.checks.push_back(judge(asked, plan.looks));
    findings.looks = std::move(plan.looks);
    explain(findings, study_, eyes, workers);
    return findings;
}

} // namespace glim
