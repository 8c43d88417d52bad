#include "app/study_run.h"
#include "input/read_study.h"
#include "input/text_file.h"
#include "judgement/session.h"
#include "report/comparison_json.h"
#include "report/run_facts.h"
#include "report/write_comparison.h"
#include "words/comparison_words.h"

#include <algorithm>
#include <memory>
#include <system_error>

namespace glim {

namespace {

std::filesystem::path study_of(const Option& option)
{
    std::error_code trouble;
    return std::filesystem::is_directory(option.study, trouble) ? option.study / "study.toml"
                                                                : option.study;
}

/// All of them before the first is judged, so that one run tells everything that is missing.
std::vector<Study> studies_of(const Study& study)
{
    Complaints complaints;
    std::vector<Study> studies;
    for (const Option& option : study.options) {
        const std::filesystem::path file = study_of(option);
        std::error_code trouble;
        if (!std::filesystem::exists(file, trouble)) {
            complaints.add(option.study_place,
                           "there is no study `" + file.string() + "` for option `" + option.name +
                               "`",
                           remedy_for_missing(file));
            continue;
        }
        try {
            studies.push_back(read_study(file));
        } catch (const InputError& error) {
            complaints.add(error);
        }
    }
    complaints.throw_if_any();
    return studies;
}

void demand_options(const Study& study)
{
    if (study.options.size() < 2)
        refuse(Place{study.file, 0, 0, {}},
               study.options.empty()
                   ? "the study names no option to compare"
                   : "the study names one option: there is nothing to hold it against",
               "add an [[option]] with its name and study for each variant; docs/compare.md has an "
               "example");
}

/// The options of one request, judged one after the other.
class Comparer {
public:
    /// Both outlive it.
    Comparer(const CompareRequest& request, StudyRun& run) : request_(request), run_(run) {}

    void judge(const Option& option, const Study& study)
    {
        const Session session(study);
        const Angle step = request_.step.value_or(study.sampling.step);
        Findings findings = session.check(session.all_checks(), step,
                                          run_.telling("looking at " + option.name, "directions"));
        if (request_.out) {
            if (options_.empty())
                pictures_.views = compared_views(findings);
            pictures_.options.push_back(
                option_views(session, findings, pictures_.views, option.name,
                             run_.telling("picturing " + option.name, "views")));
        }
        options_.push_back({option.name, from_here(study.file), study, std::move(findings),
                            option.costs, option.others_cost_nothing});
    }

    Comparison compared(const Programme& programme)
    {
        return compare(std::move(options_), programme,
                       run_.telling("measuring surfaces", "points"));
    }

    const ComparedPictures& pictures() const { return pictures_; }

private:
    /// As the comparing study would name it.
    std::string from_here(const std::string& file) const
    {
        return std::filesystem::path(file)
            .lexically_proximate(request_.study.parent_path())
            .generic_string();
    }

    const CompareRequest& request_;
    StudyRun& run_;
    ComparedPictures pictures_;
    std::vector<OptionToCompare> options_;
};

/// What the user named, in any of the studies.
std::vector<std::string> names_in(const std::vector<Study>& studies, const Study& comparing)
{
    std::vector<std::string> names;
    for (const Study& study : studies)
        for (std::string& name : run_facts(study, "", "").names)
            names.push_back(std::move(name));
    for (const Option& option : comparing.options)
        names.push_back(option.name);
    return names;
}

} // namespace

Answer answer(const CompareRequest& request, const Surroundings& here)
{
    const Study study = read_study(request.study, WithoutChecks::read);
    demand_options(study);
    const std::vector<Study> studies = studies_of(study);
    StudyRun run("compare", request, here);
    Comparer comparer(request, run);
    for (std::size_t i = 0; i < studies.size(); ++i)
        comparer.judge(study.options[i], studies[i]);
    const Comparison comparison = comparer.compared(study.costs.value_or(Programme{}));
    if (run.folder())
        write_comparison(comparison, comparer.pictures(), names_in(studies, study), *run.folder());
    run.end();
    return {ExitCode::met,
            request.json ? text_of(comparison_json(comparison))
                         : comparison_words(comparison, here.style),
            run.notes(study, "comparison.html")};
}

} // namespace glim
