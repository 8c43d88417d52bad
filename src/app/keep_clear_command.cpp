#include "app/canonical_command.h"
#include "app/commands.h"
#include "drawing/headroom_view.h"
#include "input/read_study.h"
#include "machine/progress_line.h"
#include "machine/terminal.h"
#include "report/keep_clear_json.h"
#include "report/write_keep_clear.h"
#include "words/headroom_words.h"
#include "words/keep_clear_words.h"
#include "words/warning_words.h"

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
    std::optional<NewFolder> folder;
    if (request.out)
        folder.emplace(*request.out, "keep-clear");
    ProgressLine line(!request.quiet && may_show_progress());
    const KeepClear found =
        find_keep_clear(session, {.threads = request.threads,
                                  .stop = here.stop,
                                  .progress = line.telling("drawing spaces", "spaces")});
    const Workers workers{.threads = request.threads,
                          .stop = here.stop,
                          .progress = line.telling("measuring headroom", "surfaces")};
    HeadroomShown headroom{headroom_over(session, found, workers), std::nullopt};
    if (folder) {
        if (!headroom.surfaces.empty())
            headroom.picture = headroom_view(headroom.surfaces, found, study, workers.silent());
        write_keep_clear(found, headroom, study, canonical_command(request), *folder);
    }
    line.erase();
    std::string notes = warnings_words(study.warnings, here.style);
    if (folder && !request.quiet)
        notes += "Written: " + harmless(request.out->string()) + "\n";
    return {found.is_kept() ? ExitCode::met : ExitCode::not_met,
            output_of(found, headroom.surfaces, study, request, here.style), notes};
}

} // namespace glim
