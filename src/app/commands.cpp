#include "app/commands.h"

#include "app/canonical_command.h"
#include "app/report_day.h"
#include "app/request_of.h"
#include "input/read_mesh.h"
#include "input/read_photometry.h"
#include "input/read_study.h"
#include "input/shipped_tables.h"
#include "judgement/session.h"
#include "machine/progress_line.h"
#include "machine/terminal.h"
#include "machine/whole_file.h"
#include "report/mesh_facts.h"
#include "report/photometry_facts.h"
#include "report/result_json.h"
#include "report/rule_json.h"
#include "report/starter_study.h"
#include "report/summary.h"
#include "report/write_light.h"
#include "report/write_report.h"
#include "report/write_results.h"
#include "words/table_words.h"
#include "words/text_block.h"
#include "words/warning_words.h"

#include <algorithm>

namespace glim {

namespace {

template <class Asked>
Study study_asked(const Asked& request)
{
    Study study = read_study(request.study);
    if (request.step)
        study.sampling.step = *request.step;
    return study;
}

Findings find(const Session& session, const CheckRequest& request, const Surroundings& here)
{
    ProgressLine line(!request.quiet && may_show_progress());
    return session.check(session.all_checks(), session.study().sampling.step,
                         {.threads = request.threads,
                          .stop = here.stop,
                          .progress = line.telling("looking", "directions")});
}

/// What there is to note: that there was nothing to write.
std::string put_light(const Session& session, const Findings& findings, const CheckRequest& request,
                      const Surroundings& here, NewFolder& folder)
{
    ProgressLine line(!request.quiet && may_show_progress());
    const std::size_t count =
        put_obstructed_light(session, findings, folder,
                             {.threads = request.threads,
                              .stop = here.stop,
                              .progress = line.telling("measuring light", "directions")});
    return count > 0 ? ""
                     : "note: --write-ies wrote no file: no lamp that was asked about has "
                       "photometric data; give `photometry` in its [[lamp]]\n";
}

/// That there is more to look at than the rules' own states.
std::string states_note(const Study& study)
{
    const bool more = !study.moved_parts.empty() ||
                      std::any_of(study.grounds.begin(), study.grounds.end(),
                                  [](const GroundState& g) { return !g.of_rules(); });
    return more ? "note: the study has states or moved parts that are not looked at here: "
                  "`cornerglim states` does\n"
                : "";
}

std::string check_output(const Findings& findings, const RunFacts& facts,
                         const CheckRequest& request, const TextStyle& style)
{
    if (request.json)
        return text_of(result_json(findings, facts));
    return request.quiet ? short_summary(findings, style) : summary(findings, facts, style);
}

/// A name goes beside the study first; a path, or a name with the ending, is a file.
RuleTable table_asked(const std::string& table)
{
    const bool is_path = table.find('/') != std::string::npos || table.ends_with(".toml");
    return is_path ? read_rule_table(table) : find_rule_table(table, ".", command_line_place());
}

std::vector<RuleTable> all_tables()
{
    std::vector<RuleTable> tables;
    for (const ShippedTable& shipped : shipped_tables())
        tables.push_back(parse_rule_table(shipped.text, std::string(shipped.name) + ".toml",
                                          std::string(shipped.name)));
    return tables;
}

Json tables_json(const std::vector<RuleTable>& tables)
{
    Json::Array all;
    for (const RuleTable& table : tables)
        all.push_back(table_json(table));
    return Json::Object{{"caution", caution}, {"tables", std::move(all)}};
}

std::filesystem::path study_path(const NewRequest& request)
{
    return request.out.value_or(std::filesystem::path(request.mesh).replace_extension(".toml"));
}

Answer inspect_photometry(const InspectRequest& request, const Surroundings& here)
{
    const std::string name = request.file.string();
    PhotometryFile file = read_photometry(request.file, name);
    const PhotometryFacts facts = photometry_facts(std::move(file.photometry), name);
    return {ExitCode::met,
            request.json ? text_of(photometry_json(facts)) : photometry_words(facts, here.style),
            warnings_words(file.warnings, here.style)};
}

} // namespace

Answer answer(const CheckRequest& request, const Surroundings& here)
{
    const Session session(study_asked(request));
    const Study& study = session.study();
    std::optional<NewFolder> folder;
    if (request.out)
        folder.emplace(*request.out, "check");

    const Findings findings = find(session, request, here);
    const RunFacts facts = run_facts(study, here.program_version, canonical_command(request));
    std::string light_note;
    if (folder && request.write_ies)
        light_note = put_light(session, findings, request, here, *folder);
    if (folder)
        write_results(findings, study, facts, *folder);

    Answer answer{exit_code_of(findings), check_output(findings, facts, request, here.style), {}};
    if (request.json || request.quiet)
        answer.notes = warnings_words(facts.warnings, here.style);
    answer.notes += light_note;
    if (!request.quiet)
        answer.notes += states_note(study);
    return answer;
}

Answer answer(const ReportRequest& request, const Surroundings& here)
{
    const std::string day = report_day(request.date, source_date_epoch());
    const Session session(study_asked(request));
    const Study& study = session.study();
    NewFolder folder(request.out, "report");

    ProgressLine line(!request.quiet && may_show_progress());
    const Workers workers{.threads = request.threads,
                          .stop = here.stop,
                          .progress = line.telling("looking", "directions")};
    const Findings findings = session.check(session.all_checks(), study.sampling.step, workers);
    const RunFacts facts = run_facts(study, here.program_version, canonical_command(request, day));
    const auto telling = [&](const char* doing, const char* pieces) {
        Workers told = workers;
        told.progress = line.telling(doing, pieces);
        return told;
    };
    const ReportFigures figures =
        report_figures(session, findings, telling("mapping who is in the way", "directions"),
                       telling("picturing", "pictures"));
    write_report({findings, facts, figures, day}, study, folder,
                 {.figures = line.telling("drawing", "figures"),
                  .pages = line.telling("setting", "pages"),
                  .stop = here.stop});
    line.erase();
    return {exit_code_of(findings), short_summary(findings, here.style),
            warnings_words(facts.warnings, here.style) +
                (request.quiet
                     ? ""
                     : states_note(study) + "Written: " +
                           harmless((request.out / "report.html").string()) + " and report.pdf\n")};
}

Answer answer(const InspectRequest& request, const Surroundings& here)
{
    const std::string name = request.file.string();
    if (names_photometry(request.file))
        return inspect_photometry(request, here);
    const MeshFacts facts = mesh_facts(read_mesh(request.file, name), name);
    return {ExitCode::met,
            request.json ? text_of(mesh_json(facts)) : mesh_words(facts, here.style),
            {}};
}

Answer answer(const NewRequest& request, const Surroundings&)
{
    const MeshFile mesh = read_mesh(request.mesh, request.mesh.string());
    const std::filesystem::path target = study_path(request);
    if (target == "-")
        return {ExitCode::met, starter_study(mesh, request.mesh.string()), {}};
    const std::string mesh_from_study =
        std::filesystem::proximate(request.mesh, std::filesystem::absolute(target).parent_path())
            .generic_string();
    write_file_atomically(target, starter_study(mesh, mesh_from_study),
                          request.force ? IfThere::replace : IfThere::refuse);
    return {ExitCode::met, {}, "Written: " + harmless(target.string()) + "\n"};
}

Answer answer(const TablesRequest& request, const Surroundings& here)
{
    const std::vector<RuleTable> tables =
        request.table ? std::vector{table_asked(*request.table)} : all_tables();
    if (request.json)
        return {ExitCode::met, text_of(tables_json(tables)), {}};
    return {ExitCode::met,
            request.table ? table_words(tables.front(), here.style)
                          : tables_words(tables, here.style),
            {}};
}

Answer answer(const TextRequest& request, const Surroundings&)
{
    return {ExitCode::met, request.text, {}};
}

} // namespace glim
