#include "app/commands.h"
#include "input/read_study.h"
#include "machine/progress_line.h"
#include "machine/terminal.h"
#include "report/added_lamp_json.h"
#include "report/write_added_lamp.h"
#include "words/added_lamp_words.h"
#include "words/warning_words.h"

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
    std::optional<NewFolder> folder;
    if (request.out)
        folder.emplace(*request.out);
    ProgressLine line(!request.quiet && may_show_progress());
    const auto telling = [&](const char* doing, const char* pieces) {
        return Workers{
            .threads = request.threads, .stop = here.stop, .progress = line.telling(doing, pieces)};
    };
    const Findings findings = session.check(checks_of(study, task), study.sampling.step,
                                            telling("looking", "directions"));
    const AddedLampAnswer found =
        find_added_lamp(session, task, findings, telling("trying places", "directions"));
    if (folder)
        write_added_lamp({found, session, task}, *request.out, *folder,
                         telling("picturing", "bands"));
    line.erase();
    std::string notes = warnings_words(study.warnings, here.style);
    if (folder && !request.quiet)
        notes += "Written: " + harmless(request.out->string()) + "\n";
    return {exit_code_of(found), output_of(found, study, request, here.style), notes};
}

} // namespace glim
