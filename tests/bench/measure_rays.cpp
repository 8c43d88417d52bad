#include "bench/measures.h"

#include "bench/recorded_rays.h"
#include "bench/stopwatch.h"
#include "input/read_study.h"
#include "machine/flush_to_zero.h"
#include "shapes/box_tree.h"
#include "visibility/prepared_scene.h"

#include <algorithm>

namespace glim::bench {

namespace {

constexpr LampStanding lamp{LampId{0}, false};
constexpr int times = 5;
/// Of the directions, one in so many has its rays recorded: all of them would not fit.
constexpr std::size_t recorded_of = 10;
constexpr std::size_t rays_for_box_tree = 200'000;

double sweep_cpu_s(const LampView& view, const std::vector<Direction>& directions)
{
    const FlushToZero flush;
    const Stopwatch watch;
    for (const Direction& d : directions)
        (void)seen_toward(view, d);
    return watch.thread_cpu_s();
}

/// The least of several, sweep and loop by turns, so that both meet the same machine.
struct SweepAndLoop {
    double sweep_s = 0, loop_s = 0;
    std::size_t hidden = 0;
};
SweepAndLoop by_turns(const LampView& view, const std::vector<Direction>& directions,
                      const RecordedRays& rays)
{
    SweepAndLoop least;
    for (int i = 0; i < times; ++i) {
        const double sweep = sweep_cpu_s(view, directions);
        const Stopwatch watch;
        least.hidden = rays.ask_again();
        const double loop = watch.thread_cpu_s();
        least.sweep_s = i == 0 ? sweep : std::min(least.sweep_s, sweep);
        least.loop_s = i == 0 ? loop : std::min(least.loop_s, loop);
    }
    return least;
}

/// Asks CGAL's box tree the same rays, of the same triangles in the same frame.
struct BoxTreeAnswers {
    double s_a_ray = 0;
    double different = 0; ///< the share of rays on which it does not agree with the tracer
};
BoxTreeAnswers ask_box_tree(const Study& study, const std::vector<RecordedRays::Ray>& rays)
{
    const Point origin = box_of(study.surfaces[SurfaceId{0}].mesh).centre();
    std::vector<TriangleMesh> meshes;
    for (const Surface& surface : study.surfaces)
        meshes.push_back(placed(surface.mesh, Placement::shift(-origin)));
    const shapes::BoxTree tree(meshes);
    (void)tree.blocks(rays.front().from, rays.front().toward); // the first question builds it
    const Stopwatch watch;
    std::size_t different = 0;
    for (const RecordedRays::Ray& ray : rays)
        different += tree.blocks(ray.from, ray.toward) != ray.hidden ? 1 : 0;
    const auto count = double(rays.size());
    return {watch.thread_cpu_s() / count, double(different) / count};
}

void add_full_sweeps(const LampView& view, const std::vector<Direction>& directions,
                     const std::vector<unsigned>& threads, std::vector<Figure>& figures)
{
    struct Run {
        double wall = 0, cpu = 0;
    };
    std::vector<Run> runs;
    for (const unsigned count : threads) {
        const Stopwatch watch;
        (void)sweep(view, directions, {.threads = count, .stop = {}, .progress = {}});
        runs.push_back({watch.wall_s(), watch.process_cpu_s()});
        figures.push_back({.measure = with_threads("whole sweep", count),
                           .unit = "s wall",
                           .value = runs.back().wall});
        figures.push_back({.measure = with_threads("whole sweep", count),
                           .unit = "s CPU",
                           .value = runs.back().cpu});
    }
    for (std::size_t i = 1; i < runs.size(); ++i)
        figures.push_back({.measure = "sweep, " + std::to_string(threads[i]) + " threads against " +
                                      std::to_string(threads[0]),
                           .unit = "times as fast by wall",
                           .value = runs[0].wall / runs[i].wall,
                           .target = threads[0] == 1 && threads[i] == 2 ? "at least 1.85" : ""});
    for (std::size_t i = 1; i < runs.size(); ++i)
        figures.push_back({.measure = "sweep, " + std::to_string(threads[i]) + " threads against " +
                                      std::to_string(threads[0]),
                           .unit = "times as fast by CPU",
                           .value = runs[0].cpu / runs[i].cpu * threads[i] / threads[0]});
}

} // namespace

std::vector<Figure> measure_rays(const BenchFiles& files, const Options& options)
{
    const Study study = read_study(files.area_study());
    std::vector<Figure> figures;
    const Stopwatch building;
    const PreparedScene scene(study);
    const LampView view = scene.view_of(lamp, study.sampling);
    figures.push_back(
        {.measure = "building the ray trees", .unit = "s wall", .value = building.wall_s()});
    figures.push_back(
        {.measure = "building the ray trees", .unit = "s CPU", .value = building.process_cpu_s()});

    const auto directions =
        directions_of_field(study, options.quick ? degrees(5) : study.sampling.step);
    const auto sample = every(directions, recorded_of);
    RecordedRays rays;
    sweep_cpu_s(view, sample);
    rays.stop();
    const SweepAndLoop least = by_turns(view, sample, rays);
    const double per_ray = 1e6 / double(rays.count());
    figures.push_back({.measure = "rays a direction",
                       .unit = "",
                       .value = double(rays.count()) / double(sample.size())});
    figures.push_back({.measure = "rays that meet something",
                       .unit = "%",
                       .value = 100 * double(least.hidden) / double(rays.count())});
    figures.push_back({.measure = "sweep",
                       .unit = "million rays a CPU-second",
                       .value = 1 / (least.sweep_s * per_ray)});
    figures.push_back({.measure = "bare loop",
                       .unit = "million rays a CPU-second",
                       .value = 1 / (least.loop_s * per_ray)});
    figures.push_back({.measure = "sweep against bare loop",
                       .unit = "times the CPU",
                       .value = least.sweep_s / least.loop_s,
                       .target = "at most 1.6"});
    add_full_sweeps(view, directions, options.threads, figures);
    const BoxTreeAnswers other = ask_box_tree(study, rays.some(rays_for_box_tree));
    figures.push_back({.measure = "CGAL's box tree",
                       .unit = "million rays a CPU-second",
                       .value = 1e-6 / other.s_a_ray});
    figures.push_back({.measure = "CGAL's box tree against bare loop",
                       .unit = "times the CPU",
                       .value = other.s_a_ray * double(rays.count()) / least.loop_s});
    figures.push_back({.measure = "rays that the two answer differently",
                       .unit = "a million",
                       .value = 1e6 * other.different});
    return figures;
}

} // namespace glim::bench
