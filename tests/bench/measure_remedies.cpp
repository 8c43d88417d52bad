#include "bench/measures.h"

#include "bench/body.h"
#include "bench/stopwatch.h"
#include "input/read_study.h"
#include "judgement/session.h"
#include "remedy/added_lamp.h"
#include "remedy/moved_lamp.h"
#include "remedy/relief.h"

namespace glim::bench {

namespace {

/// So much more than the skin leaves is asked, for a remedy to have work.
constexpr Area wanted_more = square_millimetres(400);
/// The first 16 parts are skin; the others stand before it or line the lamp's recess, and would
/// hide what no relief of the skin frees.
constexpr std::uint32_t skin_parts = 16;
/// Two patches of skin beside the lamp's have 100,000 facets at 1M triangles.
constexpr std::array carriers = {SurfaceId{7}, SurfaceId{11}};

Figure seconds(const std::string& what, unsigned threads, double value, const char* target)
{
    return {.measure = with_threads(what, threads),
            .unit = "s wall",
            .value = value,
            .target = threads == 2 ? target : ""};
}

/// The lens comes first among the surfaces, then the parts.
Study study_in_need(const BenchFiles& files, const Workers& workers)
{
    Study study = read_study(files.table.parent_path() / "default.toml");
    for (std::uint32_t i = skin_parts + 1; i <= part_count; ++i)
        study.surfaces[SurfaceId{i}].role = Role::ignored;
    for (std::uint32_t i = 1; i <= skin_parts; ++i)
        study.surfaces[SurfaceId{i}].reshape = Reshape{.push = -Direction::x()};
    const Session session(study);
    const Findings findings =
        session.check(session.all_checks(), study.sampling.step, workers.silent());
    const LampVerdict& verdict = findings.checks.front().deciding_verdict();
    study.tables.front().rows.front().criterion = LeastArea{verdict.least_visible + wanted_more};
    return study;
}

AddLampTask added_lamp_task()
{
    AddLampTask task;
    task.carriers.assign(carriers.begin(), carriers.end());
    task.places = 1;
    return task;
}

} // namespace

std::vector<Figure> measure_remedies(const BenchFiles& files, unsigned threads)
{
    const Workers workers{.threads = threads, .stop = {}, .progress = {}};
    const Study study = study_in_need(files, workers);
    const Angle step = study.sampling.step;
    std::vector<Figure> figures;

    const Stopwatch bound;
    const Relief least = least_relief(study, step, workers);
    figures.push_back(seconds("relief, least depth", threads, bound.wall_s(), "at most 5"));
    const Stopwatch shaping;
    const Relief relief = find_relief(study, step, workers);
    figures.push_back(
        seconds("relief, shaped and proved", threads, shaping.wall_s(), "at most 30"));
    const Length depth = least.least ? least.least->depth : Length();
    figures.push_back({.measure = "relief, least depth", .unit = "mm", .value = in_mm(depth)});
    if (depth > Length())
        figures.push_back({.measure = "relief, deepest point",
                           .unit = "of the least depth",
                           .value = relief.shape.deepest / depth,
                           .target = "at most 1.02"});

    const Session session(study);
    const AddLampTask task = added_lamp_task();
    const Stopwatch adding;
    const Findings findings = session.check(session.all_checks(), step, workers);
    const AddedLampAnswer added = find_added_lamp(session, task, findings, workers);
    figures.push_back(seconds("added lamp, one place", threads, adding.wall_s(), "at most 30"));
    figures.push_back(
        {.measure = "added lamp, candidate facets", .unit = "", .value = double(added.counts.all)});

    const Stopwatch moving;
    (void)find_moved_lamp(study, {}, workers);
    figures.push_back(seconds("moved lamp", threads, moving.wall_s(), "at most 10"));
    return figures;
}

} // namespace glim::bench
