#include "bench/measures.h"

#include "bench/stopwatch.h"
#include "input/read_study.h"
#include "visibility/prepared_scene.h"

namespace glim::bench {

namespace {

constexpr LampStanding lamp{LampId{0}, false};

/// One direction in so many is asked exactly as well: all of them would take minutes.
constexpr std::size_t held_against_exact = 25;

/// Sums of facets in another order differ in their last bits.
constexpr Area summing_error = square_millimetres(1e-6);

/// How many of the exact areas lie outside the certified bounds; it must be none.
double outside(const std::vector<Direction>& directions, const std::vector<SeenArea>& seen,
               const ExactView& exact)
{
    double count = 0;
    for (std::size_t i = 0; i < directions.size(); i += held_against_exact) {
        const ExactArea area = exact.toward(directions[i]);
        const Area slack = area.rounding + summing_error;
        const bool within =
            seen[i].low <= area.visible + slack && area.visible - slack <= seen[i].high;
        count += within ? 0 : 1;
    }
    return count;
}

} // namespace

std::vector<Figure> measure_certificate(const BenchFiles& files, unsigned threads,
                                        const Options& options)
{
    const Study study = read_study(files.area_study());
    const Workers workers{.threads = threads, .stop = {}, .progress = {}};
    const PreparedScene scene(study);
    const LampView view = scene.view_of(lamp, study.sampling);
    const auto directions =
        directions_of_field(study, options.quick ? degrees(5) : study.sampling.step);

    const Stopwatch watch;
    const Certificate certificate = scene.certificate_of(lamp, view, directions, workers);
    const double made_wall = watch.wall_s();
    const double made_cpu = watch.process_cpu_s();
    const std::vector<SeenArea> seen = sweep(view, directions, workers, &certificate);
    const double wall = watch.wall_s();
    const double cpu = watch.process_cpu_s();

    double width = 0;
    for (const SeenArea& s : seen)
        width += in_mm2(s.high - s.low);
    std::vector<Figure> figures{
        {.measure = with_threads("gathering for the certificate", threads),
         .unit = "s wall",
         .value = made_wall},
        {.measure = with_threads("gathering for the certificate", threads),
         .unit = "s CPU",
         .value = made_cpu},
        {.measure = with_threads("gathering and sweep, certified", threads),
         .unit = "s wall",
         .value = wall},
        {.measure = with_threads("gathering and sweep, certified", threads),
         .unit = "s CPU",
         .value = cpu},
    };
    if (threads != options.threads.front())
        return figures;
    figures.push_back({.measure = "certified bounds, from low to high on the mean",
                       .unit = "mm2",
                       .value = width / double(seen.size())});
    figures.push_back({.measure = "exact areas outside the certified bounds",
                       .unit = "",
                       .value = outside(directions, seen, scene.exact_view_of(lamp, view.touch))});
    return figures;
}

} // namespace glim::bench
