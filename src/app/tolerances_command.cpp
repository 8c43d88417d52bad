#include "app/canonical_command.h"
#include "app/study_run.h"
#include "input/read_study.h"
#include "judgement/tolerance_study.h"
#include "report/run_facts.h"
#include "report/tolerances_json.h"
#include "report/write_tolerances.h"
#include "words/tolerance_words.h"

namespace glim {

namespace {

Study study_with_tolerances(const TolerancesRequest& request)
{
    Study study = read_study(request.study);
    if (study.variation.tolerances.empty())
        refuse({study.file, 0, 0, {}}, "the study says nothing of tolerances",
               "add a [[tolerance]] for what may be off, such as how the lamp is fitted");
    if (request.step)
        study.variation.task.step = *request.step;
    return study;
}

/// By the interval of the share: what it does not decide stays open.
ExitCode exit_code_of(const ToleranceFindings& found, double wanted)
{
    if (found.partial)
        return ExitCode::stopped;
    if (found.all_checks.low >= wanted)
        return ExitCode::met;
    return found.all_checks.high < wanted ? ExitCode::not_met : ExitCode::open;
}

std::string output_of(const ToleranceFindings& found, const Study& study,
                      const TolerancesRequest& request, const TextStyle& style)
{
    if (request.json)
        return text_of(tolerances_json(found, study, canonical_command(request)));
    if (request.quiet)
        return wrapped(tolerances_sentence(found, study.variation.task.share), style.columns) +
               "\n";
    return tolerances_words(found, study, style);
}

/// What the user named, tolerances too.
std::vector<std::string> names_in(const Study& study, const std::string& command)
{
    std::vector<std::string> names = run_facts(study, "", command).names;
    names.push_back(command);
    for (const Tolerance& tolerance : study.variation.tolerances)
        names.push_back(tolerance.name);
    return names;
}

} // namespace

Answer answer(const TolerancesRequest& request, const Surroundings& here)
{
    const Session session(study_with_tolerances(request));
    const Study& study = session.study();
    StudyRun run("tolerances", request, here);
    const ToleranceFindings found = study_tolerances(session, run.telling("building", "builds"));
    run.end();
    const std::string command = canonical_command(request);
    if (run.folder())
        write_tolerances(found, study, names_in(study, command), command, *run.folder());
    return {exit_code_of(found, study.variation.task.share),
            output_of(found, study, request, here.style), run.notes(study, "tolerances.html")};
}

} // namespace glim
