#include "bench/measures.h"

#include "bench/body.h"
#include "bench/stopwatch.h"
#include "input/read_study.h"
#include "judgement/session.h"

#include <algorithm>

namespace glim::bench {

namespace {

constexpr Angle coarse_step = degrees(5);
constexpr int times = 5;

} // namespace

std::vector<Figure> measure_session(const BenchFiles& files, unsigned threads)
{
    Study study = read_study(files.area_study());
    const Workers workers{.threads = threads, .stop = {}, .progress = {}};
    // The lens comes first among the surfaces, and the last part stands before it.
    const SurfaceId part{part_count};
    // A live look is at the grid's directions alone, as fast as it goes.
    study.sampling.finest = coarse_step;
    study.sampling.certify = Certify::nowhere;
    const TriangleMesh drawn = study.surfaces[part].mesh;
    Session session(std::move(study));
    (void)session.check(session.all_checks(), coarse_step, workers);

    double replacing = 0, whole = 0, cpu = 0;
    for (int i = 0; i < times; ++i) {
        const Stopwatch watch;
        session.replace(part, reshaped(drawn, 0.2 * (i + 1)));
        const double replaced = watch.wall_s();
        (void)session.check(session.all_checks(), coarse_step, workers);
        const double took = watch.wall_s();
        if (i == 0 || took < whole) {
            replacing = replaced;
            whole = took;
            cpu = watch.process_cpu_s();
        }
    }
    return {{.measure = with_threads("replacing one of 20 parts", threads),
             .unit = "ms wall",
             .value = 1e3 * replacing},
            {.measure = with_threads("replacing it and checking at 5 degrees", threads),
             .unit = "ms wall",
             .value = 1e3 * whole,
             .target = threads == 2 ? "at most 150" : ""},
            {.measure = with_threads("replacing it and checking at 5 degrees", threads),
             .unit = "ms CPU",
             .value = 1e3 * cpu}};
}

} // namespace glim::bench
