#include "app/study_run.h"

#include "machine/terminal.h"
#include "words/warning_words.h"

namespace glim {

StudyRun::StudyRun(const char* command, const StudyRequest& request, const Surroundings& here)
    : request_(request), here_(here), line_(!request.quiet && may_show_progress())
{
    if (request.out)
        folder_.emplace(*request.out, command);
}

Workers StudyRun::telling(const std::string& doing, const std::string& pieces)
{
    return {
        .threads = request_.threads, .stop = here_.stop, .progress = line_.telling(doing, pieces)};
}

std::string StudyRun::notes(const Study& study, const std::string& first) const
{
    std::string notes = warnings_words(study.warnings, here_.style);
    if (!folder_ || request_.quiet)
        return notes;
    if (first.empty())
        return notes + "Written: " + harmless(request_.out->string()) + "\n";
    return notes + "Written: " + harmless((*request_.out / first).string()) +
           " and what it stands on\n";
}

} // namespace glim
