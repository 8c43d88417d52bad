#include "bench/measures.h"

#include "bench/stopwatch.h"
#include "input/read_study.h"
#include "judgement/check_study.h"

namespace glim::bench {

std::vector<Figure> measure_whole_run(const BenchFiles& files, unsigned threads)
{
    const Stopwatch watch;
    const Study study = read_study(files.study);
    const double reading = watch.wall_s();
    const Findings findings = check_study(study, {.threads = threads, .stop = {}, .progress = {}});
    const double wall = watch.wall_s();
    const double cpu = watch.process_cpu_s();
    std::size_t asked = 0, exact = 0;
    for (const LampLook& look : findings.looks)
        for (std::size_t at = 0; at < look.toward.size(); ++at, ++asked)
            exact += look.exact[at] ? 1 : 0;
    return {
        {.measure = with_threads("reading the study", threads), .unit = "s wall", .value = reading},
        {.measure = with_threads("file to verdict", threads),
         .unit = "s wall",
         .value = wall,
         .target = threads == 2 ? "at most 2" : ""},
        {.measure = with_threads("file to verdict", threads), .unit = "s CPU", .value = cpu},
        {.measure = "directions looked at", .unit = "", .value = double(asked)},
        {.measure = "of these settled exactly", .unit = "", .value = double(exact)}};
}

} // namespace glim::bench
