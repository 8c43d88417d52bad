#include "app/canonical_command.h"
#include "app/study_run.h"
#include "drawing/position_views.h"
#include "input/read_study.h"
#include "judgement/situations.h"
#include "report/situations_json.h"
#include "report/write_situations.h"
#include "words/situation_words.h"

namespace glim {

namespace {

Study study_with_states(const std::filesystem::path& file)
{
    Study study = read_study(file);
    if (study.grounds.size() == 1 && study.moved_parts.empty())
        refuse({study.file, 0, 0, {}}, "the study knows one state and no part that moves",
               "add a [[state]] for a ride height, a pitch or a load, or a [[moved_part]] such as "
               "a bonnet that opens");
    return study;
}

/// By the verdicts alone; information decides nothing.
ExitCode exit_code_of(const SituationFindings& found)
{
    Findings verdicts;
    for (std::size_t i = 0; i < found.situations.size(); ++i)
        if (found.situations[i].is_verdict)
            verdicts.checks.push_back(found.at(i));
    return exit_code_of(verdicts);
}

std::string output_of(const SituationFindings& found, const Study& study,
                      const StatesRequest& request, const TextStyle& style)
{
    if (request.json)
        return text_of(situations_json(found, study, canonical_command(request)));
    if (request.quiet)
        return wrapped(situations_sentence(found, study), style.columns) + "\n";
    return situations_words(found, study, style);
}

} // namespace

Answer answer(const StatesRequest& request, const Surroundings& here)
{
    const Study study = study_with_states(request.study);
    StudyRun run("states", request, here);
    const Workers workers = run.telling("looking", "steps");
    const SituationFindings found =
        find_situations(study, request.step.value_or(study.sampling.step), workers);
    if (run.folder())
        write_situations(found, study, position_views(found, study, workers),
                         canonical_command(request), *run.folder());
    run.end();
    return {exit_code_of(found), output_of(found, study, request, here.style),
            run.notes(study, "states.html")};
}

} // namespace glim
