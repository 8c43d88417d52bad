#include "app/study_run.h"
#include "input/read_study.h"
#include "model/asked_checks.h"
#include "report/added_lamp_json.h"
#include "report/write_added_lamp.h"
#include "words/added_lamp_words.h"

#include <algorithm>

namespace glim {

namespace {

Study study_with_task(const AddLampRequest& request)
{
    Study study = read_study(request.study);
    if (!study.add_lamp)
        refuse({study.file, 0, 0, {}}, "the study does not say where a lamp could be added",
               "add [add_lamp] with carriers = [\"...\"], the surfaces that may carry it");
    if (request.step)
        study.sampling.step = *request.step;
    return study;
}

/// Found, where a check of the study with the lamp says so.
ExitCode exit_code_of(const AddedLampAnswer& answer)
{
    if (answer.nothing_to_do())
        return ExitCode::met;
    if (answer.alone.empty())
        return ExitCode::not_met;
    const bool met = std::all_of(answer.confirmed.begin(), answer.confirmed.end(),
                                 [](Outcome o) { return o == Outcome::met; });
    return met ? ExitCode::met : ExitCode::open;
}

std::string output_of(const AddedLampAnswer& answer, const Study& study,
                      const AddLampRequest& request, const TextStyle& style)
{
    if (request.json)
        return text_of(added_lamp_json(answer, study, *study.add_lamp));
    if (request.quiet)
        return wrapped(added_lamp_sentence(answer, study), style.columns) + "\n";
    return added_lamp_words(answer, study, *study.add_lamp, style);
}

} // namespace

Answer answer(const AddLampRequest& request, const Surroundings& here)
{
    const Session session(study_with_task(request));
    const Study& study = session.study();
    const AddLampTask& task = *study.add_lamp;
    StudyRun run("add-lamp", request, here);
    const Findings findings = session.check(asked_checks(study, task.checks), study.sampling.step,
                                            run.telling("looking", "directions"));
    const AddedLampAnswer found =
        find_added_lamp(session, task, findings, run.telling("trying places", "directions"));
    if (run.folder())
        write_added_lamp({found, session, task}, *request.out, *run.folder(),
                         run.telling("picturing", "bands"));
    run.end();
    return {exit_code_of(found), output_of(found, study, request, here.style), run.notes(study)};
}

} // namespace glim
