#include "app/canonical_command.h"
#include "app/study_run.h"
#include "input/read_study.h"
#include "judgement/surface_margins.h"
#include "model/asked_checks.h"
#include "report/margins_json.h"
#include "report/run_facts.h"
#include "report/write_margins.h"
#include "words/margin_words.h"

#include <algorithm>

namespace glim {

namespace {

MarginsWanted wanted_of(const MarginsRequest& request, const Study& study)
{
    MarginsWanted wanted;
    wanted.checks = asked_checks(study);
    if (request.step)
        wanted.step = *request.step;
    if (request.reach)
        wanted.reach = *request.reach;
    return wanted;
}

ExitCode exit_code_of(const MarginFindings& found)
{
    const auto any = [&](auto which) {
        return std::any_of(found.checks.begin(), found.checks.end(), which);
    };
    if (any([](const CheckMargins& c) { return !c.met && c.left_out.empty(); }))
        return ExitCode::not_met;
    return any([](const CheckMargins& c) { return !c.left_out.empty(); }) ? ExitCode::open
                                                                          : ExitCode::met;
}

std::string output_of(const MarginFindings& found, const Study& study,
                      const MarginsRequest& request, const TextStyle& style)
{
    if (request.json)
        return text_of(margins_json(found, study));
    return request.quiet ? margin_sentences(found, study, style)
                         : margin_words(found, study, style);
}

} // namespace

Answer answer(const MarginsRequest& request, const Surroundings& here)
{
    const Study study = read_study(request.study);
    StudyRun run("margins", request, here);
    const MarginFindings found =
        surface_margins(study, wanted_of(request, study), run.telling("moving", "surfaces"));
    if (run.folder()) {
        const std::string command = canonical_command(request);
        std::vector<std::string> names = run_facts(study, "", command).names;
        names.push_back(command);
        write_margins(found, study, names, command, *run.folder());
    }
    run.end();
    return {exit_code_of(found), output_of(found, study, request, here.style),
            run.notes(study, "margins.html")};
}

} // namespace glim
