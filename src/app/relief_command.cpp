#include "app/study_run.h"
#include "input/read_study.h"
#include "remedy/relief.h"
#include "report/relief_json.h"
#include "report/write_relief.h"
#include "words/relief_words.h"

#include <algorithm>

namespace glim {

namespace {

/// Found is what `check` confirms; what the rules leave open stays open.
ExitCode exit_code_of(const Relief& relief)
{
    if (!relief.found())
        return ExitCode::not_met;
    const Findings& findings = relief.after ? *relief.after : relief.before;
    const bool met = std::all_of(findings.checks.begin(), findings.checks.end(),
                                 [](const CheckFindings& c) { return c.outcome == Outcome::met; });
    return met ? ExitCode::met : ExitCode::open;
}

std::string output_of(const Relief& relief, const Study& study, const ReliefRequest& request,
                      const TextStyle& style)
{
    if (request.json)
        return text_of(relief_json(relief, study));
    return request.quiet ? wrapped(relief_sentence(relief, study), style.columns) + "\n"
                         : relief_words(relief, study, style);
}

} // namespace

Answer answer(const ReliefRequest& request, const Surroundings& here)
{
    const Study study = read_study(request.study);
    StudyRun run("relief", request, here);
    const Relief relief = find_relief(study, request.step.value_or(study.sampling.step),
                                      run.telling("looking for a relief", "directions"));
    if (run.folder())
        write_relief(relief, study, *request.out, *run.folder());
    run.end();
    return {exit_code_of(relief), output_of(relief, study, request, here.style), run.notes(study)};
}

} // namespace glim
