#include "app/canonical_command.h"
#include "app/study_run.h"
#include "drawing/headroom_view.h"
#include "input/read_study.h"
#include "report/keep_clear_json.h"
#include "report/write_keep_clear.h"
#include "words/headroom_words.h"
#include "words/keep_clear_words.h"

namespace glim {

namespace {

std::string quiet_words(const KeepClear& found, const std::vector<Headroom>& headroom,
                        const Study& study, const TextStyle& style)
{
    std::string words = wrapped(keep_clear_sentence(found, study), style.columns) + "\n";
    for (const std::string& note : keep_clear_notes(found))
        words += wrapped(note, style.columns) + "\n";
    if (!headroom.empty())
        words += wrapped(headroom_sentence(headroom, study), style.columns) + "\n";
    return words;
}

std::string output_of(const KeepClear& found, const std::vector<Headroom>& headroom,
                      const Study& study, const KeepClearRequest& request, const TextStyle& style)
{
    if (request.json)
        return text_of(keep_clear_json(found, headroom, study, canonical_command(request)));
    return request.quiet ? quiet_words(found, headroom, study, style)
                         : keep_clear_words(found, headroom, study, style);
}

} // namespace

Answer answer(const KeepClearRequest& request, const Surroundings& here)
{
    const Session session(read_study(request.study));
    const Study& study = session.study();
    StudyRun run("keep-clear", request, here);
    const KeepClear found = find_keep_clear(session, run.telling("drawing spaces", "spaces"));
    const Workers workers = run.telling("measuring headroom", "surfaces");
    HeadroomShown headroom{headroom_over(session, found, workers), std::nullopt};
    if (run.folder()) {
        if (!headroom.surfaces.empty())
            headroom.picture = headroom_view(headroom.surfaces, found, study, workers.silent());
        write_keep_clear(found, headroom, study, canonical_command(request), *run.folder());
    }
    run.end();
    return {found.is_kept() ? ExitCode::met : ExitCode::not_met,
            output_of(found, headroom.surfaces, study, request, here.style), run.notes(study)};
}

} // namespace glim
