#include "bench/measures.h"

#include "bench/body.h"
#include "bench/stopwatch.h"
#include "input/read_study.h"
#include "judgement/session.h"
#include "judgement/tolerance_study.h"

namespace glim::bench {

namespace {

/// The lens comes first among the surfaces, then 16 patches of skin, bezel, grille, bonnet edge and
/// guard.
constexpr std::uint32_t skin_first = 1, skin_last = 16, bezel = 17, bonnet = 19, guard = 20;

Tolerance shifts(const std::string& name, ToleranceOrigin origin, std::vector<SurfaceId> surfaces,
                 double mm)
{
    Tolerance t;
    t.name = name;
    t.origin = origin;
    t.surfaces = std::move(surfaces);
    for (const ToleranceWay way : {ToleranceWay::forward, ToleranceWay::outboard, ToleranceWay::up})
        t.by[static_cast<std::size_t>(way)] = mm;
    return t;
}

/// Five bodies that stray against each other, fifteen ways in all.
std::vector<Tolerance> tolerances()
{
    std::vector<SurfaceId> skin;
    for (std::uint32_t i = skin_first; i <= skin_last; ++i)
        skin.push_back(SurfaceId{i});
    return {shifts("lamp", ToleranceOrigin::installation, {SurfaceId{0}}, 1),
            shifts("skin", ToleranceOrigin::part, skin, 0.7),
            shifts("bezel", ToleranceOrigin::part, {SurfaceId{bezel}}, 0.5),
            shifts("bonnet", ToleranceOrigin::installation, {SurfaceId{bonnet}}, 1.5),
            shifts("guard", ToleranceOrigin::part, {SurfaceId{guard}}, 0.7)};
}

/// When counting began and ended, by the pieces of work told of.
struct Counting {
    double began_s = -1, ended_s = -1, began_cpu_s = 0, ended_cpu_s = 0;
};

std::vector<Figure> measure(Study study, std::size_t directions, unsigned threads,
                            const char* target)
{
    study.variation.task.directions = directions;
    const std::size_t builds = study.variation.task.builds;
    const Session session(std::move(study));
    const Stopwatch watch;
    Counting counting;
    const auto progress = [&](std::size_t done, std::size_t) {
        if (counting.began_s < 0) {
            counting.began_s = watch.wall_s();
            counting.began_cpu_s = watch.process_cpu_s();
        }
        if (done >= builds && counting.ended_s < 0) {
            counting.ended_s = watch.wall_s();
            counting.ended_cpu_s = watch.process_cpu_s();
        }
    };
    const ToleranceFindings found =
        study_tolerances(session, {.threads = threads, .stop = {}, .progress = progress});
    const std::string of = directions == 0 ? "every 5 degrees" : "21 deciding directions";
    return {{.measure = with_threads(std::to_string(builds) + " builds, " + of, threads),
             .unit = "s wall",
             .value = counting.ended_s - counting.began_s,
             .target = threads == 2 ? target : ""},
            {.measure = with_threads(std::to_string(builds) + " builds, " + of, threads),
             .unit = "s CPU",
             .value = counting.ended_cpu_s - counting.began_cpu_s},
            {.measure = with_threads("tolerance study, " + of, threads),
             .unit = "s wall",
             .value = watch.wall_s()},
            {.measure = "share of builds, " + of,
             .unit = "",
             .value = found.checks.front().share.share}};
}

} // namespace

std::vector<Figure> measure_tolerances(const BenchFiles& files, std::size_t builds,
                                       unsigned threads)
{
    Study study = read_study(files.area_study());
    study.variation.tolerances = tolerances();
    study.variation.task.builds = builds;
    std::vector<Figure> figures = measure(study, 21, threads, "at most 10");
    for (Figure& figure : measure(study, 0, threads, "at most 80"))
        figures.push_back(std::move(figure));
    return figures;
}

} // namespace glim::bench
