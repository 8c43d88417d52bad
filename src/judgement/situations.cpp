#include "judgement/situations.h"

#include "judgement/session.h"

#include <algorithm>
#include <set>

namespace glim {

namespace {

/// A study whose checks are those of one situation after the other.
struct Asking {
    std::vector<Check> checks;
    std::vector<Situation> situations; ///< one a check

    void ask(Check check, Situation situation)
    {
        checks.push_back(std::move(check));
        situations.push_back(std::move(situation));
    }
};

/// Looks are counted from 0 in each finding.
void append(Findings& all, Findings more)
{
    const std::size_t by = all.looks.size();
    for (CheckFindings& check : more.checks)
        for (RowFindings& row : check.rows) {
            for (LampVerdict& verdict : row.lamps)
                verdict.look += by;
            if (row.together)
                row.together->look += by;
        }
    std::move(more.looks.begin(), more.looks.end(), std::back_inserter(all.looks));
    std::move(more.checks.begin(), more.checks.end(), std::back_inserter(all.checks));
}

/// Whether every row of the check that applies takes the ground in that state of its own accord.
bool stands_in(const CheckFindings& check, const std::vector<LampLook>& looks,
               const std::string& state)
{
    const auto there = [&](const LampVerdict& v) { return looks[v.look].state == state; };
    return std::all_of(check.rows.begin(), check.rows.end(), [&](const RowFindings& row) {
        return std::all_of(row.lamps.begin(), row.lamps.end(), there) &&
               (!row.together || there(*row.together));
    });
}

Asking as_rules_have_it(const Study& study)
{
    Asking asking;
    for (std::size_t c = 0; c < study.checks.size(); ++c)
        asking.ask(study.checks[c], {.check = c, .is_verdict = true});
    return asking;
}

/// In all grounds at once; `ruled` are the findings of as_rules_have_it().
Asking in_other_states(const Study& study, const Findings& ruled)
{
    Asking asking;
    for (const GroundState& ground : study.grounds)
        for (std::size_t c = 0; c < study.checks.size(); ++c) {
            if (stands_in(ruled.checks[c], ruled.looks, ground.state))
                continue;
            Check check = study.checks[c];
            check.state = ground.state;
            asking.ask(std::move(check), {.check = c, .state = ground.state});
        }
    return asking;
}

/// The rows of moved parts that speak of a lamp of the check, each lamp once a row.
class RowsOfMovedParts {
public:
    explicit RowsOfMovedParts(const Study& study) : study_(study) {}

    void ask(std::size_t place, const MovedTo& moved, Asking& asking)
    {
        const Check& drawn = study_.checks[place];
        for (const RuleRow& row : study_.tables[drawn.table].rows) {
            if (!row.of_moved_parts)
                continue;
            Check check = drawn;
            check.rule = row.id;
            check.options.clear();
            std::erase_if(check.lamps, [&](LampId lamp) {
                return !speaks_of(row, lamp) || !asked_.emplace(&row, lamp.index).second;
            });
            if (!check.lamps.empty())
                asking.ask(std::move(check), {.check = place, .moved = moved, .is_verdict = true});
        }
    }

private:
    bool speaks_of(const RuleRow& row, LampId lamp) const
    {
        return row.functions.empty() ||
               std::find(row.functions.begin(), row.functions.end(), study_.lamps[lamp].function) !=
                   row.functions.end();
    }

    const Study& study_;
    std::set<std::pair<const RuleRow*, std::uint32_t>> asked_;
};

Asking in_that_position(const Study& study, const MovedTo& moved)
{
    Asking asking;
    RowsOfMovedParts rows(study);
    for (std::size_t c = 0; c < study.checks.size(); ++c)
        rows.ask(c, moved, asking);
    for (std::size_t c = 0; c < study.checks.size(); ++c)
        asking.ask(study.checks[c], {.check = c, .moved = moved});
    return asking;
}

/// Asks one list after the other, and tells how far it is among them all.
class Asker {
public:
    Asker(SituationFindings& all, Angle step, const Workers& workers, std::size_t stages)
        : all_(all), step_(step), workers_(workers), stages_(stages)
    {
    }

    void ask(Study study, Asking asking)
    {
        study.checks = std::move(asking.checks);
        Workers stage = workers_;
        if (workers_.progress)
            stage.progress = [this, before = stage_](std::size_t done, std::size_t all) {
                workers_.progress(before * parts + (all == 0 ? 0 : done * parts / all),
                                  stages_ * parts);
            };
        ++stage_;
        if (study.checks.empty())
            return;
        const Session session(std::move(study));
        append(all_.found,
               session.check(session.all_checks(), step_, stage, Explained::outcomes_alone));
        std::move(asking.situations.begin(), asking.situations.end(),
                  std::back_inserter(all_.situations));
    }

private:
    static constexpr std::size_t parts = 1000; ///< of a stage, as progress counts them

    SituationFindings& all_;
    Angle step_;
    const Workers& workers_;
    std::size_t stages_, stage_ = 0;
};

std::vector<MovedTo> all_positions(const Study& study)
{
    std::vector<MovedTo> all;
    for (std::size_t p = 0; p < study.moved_parts.size(); ++p)
        for (std::size_t i = 0; i < study.moved_parts[p].positions.size(); ++i)
            all.push_back({p, i});
    return all;
}

} // namespace

SituationFindings find_situations(const Study& study, Angle step, const Workers& workers)
{
    SituationFindings all;
    all.found.study_file = study.file;
    all.found.title = study.title;
    all.found.sampling = study.sampling;
    all.found.sampling.step = step;
    const std::vector<MovedTo> positions = all_positions(study);
    Asker asker(all, step, workers, 2 + positions.size());
    asker.ask(study, as_rules_have_it(study));
    asker.ask(study, in_other_states(study, all.found));
    for (const MovedTo& moved : positions)
        asker.ask(in_position(study, moved), in_that_position(study, moved));
    return all;
}

} // namespace glim
