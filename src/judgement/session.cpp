#include "judgement/session.h"

#include "judgement/between_directions.h"
#include "judgement/estimate.h"
#include "judgement/explain.h"
#include "judgement/light_rows.h"
#include "judgement/multiplying_gap.h"
#include "judgement/place_verdict.h"
#include "judgement/plan.h"
#include "judgement/rank.h"
#include "judgement/rule_tree.h"
#include "judgement/see.h"
#include "judgement/verdict.h"
#include "model/asked_checks.h"

#include <algorithm>

namespace glim {

namespace {

/// Each side of the vehicle must have its answer: the worse one stands, the first among equals.
void keep_worse(std::optional<LampVerdict>& kept, LampVerdict other)
{
    if (!kept || rank_of(other) < rank_of(*kept))
        kept = std::move(other);
}

/// Turns what was looked at into findings.
class Judge {
public:
    Judge(const Study& study, const PreparedScene& scene, const Sampling& sampling,
          const Plan& plan)
        : study_(study), scene_(scene), sampling_(sampling), looks_(plan.looks)
    {
    }

    CheckFindings check(const AskedCheck& asked) const
    {
        CheckFindings check;
        check.name = asked.check->name;
        check.table = asked.table->name;
        check.regulation = asked.table->regulation;
        check.edition = asked.table->edition;
        check.rule = asked.check->rule;
        check.options = asked.check->options;
        const Rule* rule = asked.table->rule(check.rule);
        check.rule_title = rule ? rule->title : asked.rows.front().row->title;
        check.rows.reserve(asked.rows.size());
        for (const AskedRow& row : asked.rows)
            check.rows.push_back(findings_of(row));
        for (RowFindings& row : check.rows)
            row.not_chosen = row.proof_from.empty() && is_not_chosen(asked, row.row.id);
        add_estimates(check, study_);
        tell_categories(check);
        answer_from_rows(check, {*asked.table, study_.vehicle, asked.lamps.consulted}, looks_);
        return check;
    }

private:
    /// Which category counts is told with every row: that of a lamp's own check may not ask for it,
    /// and yet the proof that it names does.
    static void tell_categories(CheckFindings& check)
    {
        for (std::size_t lamp = 0; lamp < check.rows.front().lamps.size(); ++lamp) {
            const auto told =
                std::find_if(check.rows.begin(), check.rows.end(), [&](const RowFindings& row) {
                    return row.lamps[lamp].category.has_value();
                });
            if (told == check.rows.end())
                continue;
            const CategoryByGap category = *told->lamps[lamp].category;
            for (RowFindings& row : check.rows)
                row.lamps[lamp].category = category;
        }
    }

    /// Whether the row stands only below ways that the maker did not choose.
    static bool is_not_chosen(const AskedCheck& asked, const std::string& row)
    {
        const auto& options = asked.check->options;
        const auto below = [&](const std::string& part) {
            const auto rows = rows_under(*asked.table, part);
            return std::any_of(rows.begin(), rows.end(),
                               [&](const RuleRow* r) { return r->id == row; });
        };
        for (const Rule* rule : rules_under(*asked.table, asked.check->rule)) {
            const auto chosen = std::find_first_of(rule->parts.begin(), rule->parts.end(),
                                                   options.begin(), options.end());
            if (rule->combine == Combine::choose_one && chosen != rule->parts.end() &&
                !below(*chosen) && std::any_of(rule->parts.begin(), rule->parts.end(), below))
                return true;
        }
        return false;
    }

    RowFindings findings_of(const AskedRow& row) const
    {
        RowFindings findings{.row = *row.row, .lamps = {}, .together = {}};
        findings.proof_from = row.proof_from ? row.proof_from->name : "";
        for (const Asked& lamp : row.lamps)
            findings.lamps.push_back(verdict(*row.row, lamp));
        for (const Asked& side : row.together)
            keep_worse(findings.together, verdict(*row.row, side));
        return findings;
    }

    /// A row of light tells the gap that multiplies it.
    LampVerdict with_gap(LampVerdict verdict, const RuleRow& row, const Asked& asked) const
    {
        if (const RuleRow* gap_row = row_of_multiplier(row, study_); gap_row && verdict.light)
            verdict.measured = multiplying_gap(*gap_row, asked, looks_[asked.look], study_, scene_);
        return verdict;
    }

    LampVerdict verdict(const RuleRow& row, const Asked& asked) const
    {
        const LampLook& look = looks_[asked.look];
        if (looks_in_directions(row, asked))
            return with_gap(verdict_of(row, asked, look, sampling_), row, asked);
        if (!asks_directions(row.criterion))
            return place_verdict(row, asked, look, study_, scene_);
        LampVerdict verdict = begun_verdict(asked);
        if (!asked.not_applicable && asked.without_light)
            verdict.outcome = Outcome::no_photometric_data;
        return verdict;
    }

    const Study& study_;
    const PreparedScene& scene_;
    const Sampling& sampling_;
    const std::vector<LampLook>& looks_;
};

} // namespace

Session::Session(Study study) : study_(std::move(study)), drawn_lamps_(study_.lamps), scene_(study_)
{
}

std::vector<std::size_t> Session::all_checks() const { return asked_checks(study_); }

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

Findings Session::check(std::span<const std::size_t> checks, Angle step, const Workers& workers,
                        Explained explained) const
{
    Findings findings;
    findings.study_file = study_.file;
    findings.title = study_.title;
    findings.sampling = study_.sampling;
    findings.sampling.step = step;

    Plan plan = plan_of(study_, scene_, checks, step);
    const Eyes eyes(study_, scene_, plan, workers);
    eyes.see(plan, workers);
    eyes.settle(plan, workers);
    const BetweenDirections between(eyes, findings.sampling, workers);
    between.refine(plan);
    const Judge judge(study_, scene_, findings.sampling, plan);
    for (const AskedCheck& asked : plan.checks)
        findings.checks.push_back(judge.check(asked));
    findings.looks = std::move(plan.looks);
    if (explained == Explained::outcomes_alone)
        return findings;
    between.add_crossings(findings);
    explain(findings, study_, scene_, eyes, workers);
    return findings;
}

} // namespace glim
