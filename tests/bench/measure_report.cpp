#include "bench/measures.h"

#include "bench/stopwatch.h"
#include "input/read_study.h"
#include "machine/temporary_folder.h"
#include "report/write_report.h"

namespace glim::bench {

namespace {

/// As the command `report` does it.
std::vector<Figure> measure_report(const std::filesystem::path& file, const std::string& what,
                                   unsigned threads, const char* target)
{
    const test::TemporaryFolder folder;
    const Workers workers{.threads = threads, .stop = {}, .progress = {}};
    const Stopwatch watch;
    const Session session(read_study(file));
    const Study& study = session.study();
    const Findings findings = session.check(session.all_checks(), study.sampling.step, workers);
    const double judged = watch.wall_s();
    const ReportFigures figures = report_figures(session, findings, workers, workers);
    const double shown = watch.wall_s();
    NewFolder report(folder.path() / "report");
    const RunFacts facts = run_facts(study, "of the measure", "none");
    write_report({findings, facts, figures}, study, report);
    const std::string measure = with_threads("file to report, " + what, threads);
    return {{.measure = measure,
             .unit = "s wall",
             .value = watch.wall_s(),
             .target = threads == 2 ? target : ""},
            {.measure = measure, .unit = "s CPU", .value = watch.process_cpu_s()},
            {.measure = measure + ": judging", .unit = "s wall", .value = judged},
            {.measure = measure + ": maps and pictures", .unit = "s wall", .value = shown - judged},
            {.measure = measure + ": pages and files",
             .unit = "s wall",
             .value = watch.wall_s() - shown}};
}

} // namespace

std::vector<Figure> measure_demo_report(unsigned threads)
{
    return measure_report(std::filesystem::path(GLIM_SOURCE_DIR) / "meshes/demo/theme-c.toml",
                          "theme C of the demo", threads, "at most 10");
}

std::vector<Figure> measure_body_report(const BenchFiles& files, unsigned threads)
{
    return measure_report(files.two_lamps_study(), "two lamps", threads, "at most 25");
}

} // namespace glim::bench
