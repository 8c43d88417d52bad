#include "app/study_run.h"
#include "input/read_study.h"
#include "report/moved_lamp_json.h"
#include "report/write_moved_lamp.h"
#include "words/moved_lamp_words.h"

#include <algorithm>

namespace glim {

namespace {

Study study_with_task(const MoveLampRequest& request)
{
    Study study = read_study(request.study);
    if (!study.move_lamp)
        refuse({study.file, 0, 0, {}}, "the study does not say that a lamp could be moved",
               "add [move_lamp], and moves_with = \"...\" to the surfaces of its unit");
    if (request.step)
        study.sampling.step = *request.step;
    return study;
}

ExitCode exit_code_of(const MovedLampAnswer& answer)
{
    if (answer.met_as_drawn)
        return ExitCode::met;
    if (!answer.least)
        return ExitCode::not_met;
    const bool met = std::all_of(answer.confirmed.begin(), answer.confirmed.end(),
                                 [](Outcome o) { return o == Outcome::met; });
    return met ? ExitCode::met : ExitCode::open;
}

std::string output_of(const MovedLampAnswer& answer, const Study& study,
                      const MoveLampRequest& request, const TextStyle& style)
{
    if (request.json)
        return text_of(moved_lamp_json(answer, study, *study.move_lamp));
    if (request.quiet)
        return wrapped(moved_lamp_sentence(answer, study), style.columns) + "\n";
    return moved_lamp_words(answer, study, *study.move_lamp, style);
}

} // namespace

Answer answer(const MoveLampRequest& request, const Surroundings& here)
{
    const Study study = study_with_task(request);
    const MoveLampTask& task = *study.move_lamp;
    StudyRun run("move-lamp", request, here);
    const MovedLampAnswer found = find_moved_lamp(study, task, run.telling("moving", "ways"));
    if (run.folder()) {
        MoveMap map;
        if (!found.met_as_drawn)
            map = move_map(study, task, run.telling("mapping", "moves"));
        write_moved_lamp({found, map, study, task}, *request.out, *run.folder());
    }
    run.end();
    return {exit_code_of(found), output_of(found, study, request, here.style), run.notes(study)};
}

} // namespace glim
