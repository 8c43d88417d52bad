#include "bench/measures.h"

#include "bench/stopwatch.h"
#include "input/read_study.h"
#include "judgement/check_study.h"

namespace glim::bench {

namespace {

struct Run {
    double reading_s, wall_s, cpu_s;
    Findings findings;
};

Run run_of(const std::filesystem::path& file, unsigned threads)
{
    const Stopwatch watch;
    const Study study = read_study(file);
    const double reading = watch.wall_s();
    Findings findings = check_study(study, {.threads = threads, .stop = {}, .progress = {}});
    return {reading, watch.wall_s(), watch.process_cpu_s(), std::move(findings)};
}

/// How many directions were looked at, and for how many of them an exact area was asked.
std::pair<double, double> asked_and_exact(const Findings& findings)
{
    double asked = 0, exact = 0;
    for (const LampLook& look : findings.looks)
        for (std::size_t at = 0; at < look.toward.size(); ++at, ++asked)
            exact += look.exact[at] ? 1 : 0;
    return {asked, exact};
}

} // namespace

std::vector<Figure> measure_whole_run(const std::filesystem::path& file, const BenchStudy& study,
                                      unsigned threads)
{
    const Run run = run_of(file, threads);
    const auto [asked, exact] = asked_and_exact(run.findings);
    const std::string what = "file to verdict, " + std::string(study.what);
    return {{.measure = with_threads("reading the study", threads),
             .unit = "s wall",
             .value = run.reading_s},
            {.measure = with_threads(what, threads),
             .unit = "s wall",
             .value = run.wall_s,
             .target = std::string(threads == 2 ? study.target : "")},
            {.measure = with_threads(what, threads), .unit = "s CPU", .value = run.cpu_s},
            {.measure = what + ": directions looked at", .unit = "", .value = asked},
            {.measure = what + ": of these asked exactly", .unit = "", .value = exact}};
}

} // namespace glim::bench
