#include "remedy/added_lamp.h"

#include "model/asked_checks.h"
#include "remedy/lamp_cover.h"
#include "remedy/place_search.h"

#include <algorithm>

namespace glim {

namespace {

/// So many rays are asked of candidates; finer grids of directions are thinned to it.
constexpr double most_rays = 6e7;

/// The grids to choose from, degrees.
constexpr std::array thinner_steps = {1.0, 2.0, 3.0, 5.0, 7.5, 10.0, 15.0};

/// The grid on which all candidates can be asked with so many rays at most.
Angle candidate_step(const AddedLampNeeds::From& from, std::size_t candidates)
{
    const Angle own = from.study.sampling.step;
    Angle step = own;
    for (const double wider : thinner_steps) {
        const std::size_t looks = AddedLampNeeds(from, step).looks().size();
        if (static_cast<double>(looks) * static_cast<double>(candidates) <= most_rays)
            return step;
        step = std::max(own, degrees(wider));
    }
    return step;
}

std::vector<LightAsked> light_asked(const std::vector<RowsToAnswer>& rows)
{
    std::vector<LightAsked> light;
    for (const RowsToAnswer& check : rows)
        for (const RuleRow* row : check.of_light) {
            const auto* least = std::get_if<LeastIntensity>(&row->criterion);
            light.push_back({*row, least ? std::optional(least->least) : std::nullopt});
        }
    return light;
}

/// Each once, in the order of the checks.
std::vector<std::string> words_of_tables(const Study& study, std::span<const std::size_t> checks)
{
    std::vector<std::string> all;
    for (const std::size_t c : checks) {
        const std::string& words = study.tables[study.checks[c].table].added_lamp;
        if (!words.empty() && std::find(all.begin(), all.end(), words) == all.end())
            all.push_back(words);
    }
    return all;
}

CandidateCounts counts_of(const AddedLampAnswer& answer)
{
    CandidateCounts counts;
    counts.all = answer.candidates.size();
    for (const CandidateFacet& c : answer.candidates) {
        const bool all = answer.missing > 0 && c.serves == answer.missing;
        if (!c.may_stand)
            ++counts.no_room_by_rules;
        else if (c.serves == 0 && !c.alone)
            ++counts.serve_none;
        else if (!all && !c.alone)
            ++counts.serve_some;
        counts.serve_all += all;
        counts.alone += c.alone.has_value();
    }
    return counts;
}

std::string_view key_of(LampFunction function)
{
    return std::find_if(function_words.begin(), function_words.end(),
                        [&](const FunctionWord& w) { return w.function == function; })
        ->key;
}

/// Where no row of a check speaks of lamps with this function, none could answer it.
void refuse_wrong_function(const Study& study, const AddedLampNeeds& needs,
                           const AddedLampAnswer& answer)
{
    Complaints complaints;
    for (std::size_t i = 0; i < answer.checks.size(); ++i)
        if (!needs.rows()[i].speaks_of_lamp)
            complaints.add({study.file, 0, 0, {}},
                           "no row of check `" + study.checks[answer.checks[i]].name +
                               "` speaks of a lamp whose function is `" +
                               std::string(key_of(answer.lamp.function)) + "`",
                           "name another `function`, or other `checks`, in [add_lamp]");
    complaints.throw_if_any();
}

void refuse_no_candidates(const Study& study, const std::vector<CandidateFacet>& candidates)
{
    if (candidates.empty())
        refuse({study.file, 0, 0, {}},
               "no facet of the carriers lies on the lamp's side and within the boxes",
               "correct `carriers` or `boxes` in [add_lamp]");
}

Area largest_lens(const AddLampTask& task)
{
    const LensShape shape{task.width_to_height};
    return shape.area(millimetres(task.largest / shape.across(millimetres(1))));
}

/// Which failing directions each candidate serves.
std::vector<std::vector<bool>> weigh(AddedLampAnswer& answer, const Session& session,
                                     const AddLampTask& task, const AddedLampNeeds::From& from,
                                     const Workers& workers)
{
    auto candidates = candidate_facets(from.study, task, answer.lamp);
    refuse_no_candidates(from.study, candidates);
    answer.step = candidate_step(from, candidates.size());
    const AddedLampNeeds needs(from, answer.step);
    answer.missing = needs.missing().size();
    WeighedCandidates weighed =
        glim::weighed(std::move(candidates), session, needs, largest_lens(task), workers);
    answer.candidates = std::move(weighed.facets);
    answer.counts = counts_of(answer);
    return std::move(weighed.serves);
}

/// What a check of the study with the best lamp says.
std::vector<Outcome> outcomes_with(const Study& study, const AddedLampAnswer& answer,
                                   const Workers& workers)
{
    StudyWithLamp with = with_added_lamp(study, answer.lamp, answer.alone.front().lens,
                                         answer.checks, WhoAnswers::beside_others);
    const Session session(std::move(with.study));
    std::vector<Outcome> outcomes;
    for (const CheckFindings& check :
         session.check(answer.checks, study.sampling.step, workers).checks)
        outcomes.push_back(check.outcome);
    return outcomes;
}

} // namespace

AddedLampAnswer find_added_lamp(const Session& session, const AddLampTask& task,
                                const Findings& findings, const Workers& workers)
{
    const Study& study = session.study();
    AddedLampAnswer answer;
    Findings unmet;
    unmet.looks = findings.looks;
    const std::vector<std::size_t> asked = asked_checks(study, task.checks);
    for (std::size_t i = 0; i < asked.size(); ++i)
        if (findings.checks[i].outcome != Outcome::met) {
            answer.checks.push_back(asked[i]);
            unmet.checks.push_back(findings.checks[i]);
        }
    if (answer.nothing_to_do())
        return answer;

    answer.helped = task.lamp.value_or(study.checks[answer.checks.front()].lamps.front());
    answer.lamp = lamp_to_add(study, task, answer.helped);
    const AddedLampNeeds::From from{study, unmet, answer.checks, answer.helped, answer.lamp};
    const AddedLampNeeds needs(from, study.sampling.step);
    refuse_wrong_function(study, needs, answer);
    answer.light = light_asked(needs.rows());
    answer.by_tables = words_of_tables(study, answer.checks);

    const auto serves = weigh(answer, session, task, from, workers);
    PlaceSearch search(session, task, answer, workers);
    answer.alone = search.alone(needs);
    if (!answer.alone.empty())
        answer.confirmed = outcomes_with(study, answer, workers);
    if (answer.missing == 0)
        return answer;
    answer.filling = search.filling(needs);
    if (answer.counts.serve_all == 0)
        if (const auto cover = fewest_sets(serves))
            answer.cover = LampCover{cover->sets, cover->is_fewest};
    return answer;
}

} // namespace glim
