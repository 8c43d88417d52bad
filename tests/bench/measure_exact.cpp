#include "bench/measures.h"

#include "bench/stopwatch.h"
#include "bench/z_buffer.h"
#include "input/read_study.h"
#include "machine/flush_to_zero.h"
#include "visibility/prepared_scene.h"

#include <algorithm>
#include <cmath>

namespace glim::bench {

namespace {

constexpr LampStanding lamp{LampId{0}, false};
constexpr Length pixel = millimetres(0.5);

/// One way to the area, over all directions.
struct Way {
    std::vector<double> mm2;
    double ms_a_direction = 0;
};

template <class Ask>
Way way_of(const std::vector<Direction>& directions, const Ask& ask)
{
    const FlushToZero flush;
    const Stopwatch watch;
    Way way;
    for (const Direction& d : directions)
        way.mm2.push_back(in_mm2(ask(d)));
    way.ms_a_direction = 1e3 * watch.thread_cpu_s() / double(directions.size());
    return way;
}

void add_error(const std::string& what, const Way& way, const Way& truth,
               std::vector<Figure>& figures)
{
    double squares = 0, most = 0;
    for (std::size_t i = 0; i < truth.mm2.size(); ++i) {
        const double off = way.mm2[i] - truth.mm2[i];
        squares += off * off;
        most = std::max(most, std::abs(off));
    }
    figures.push_back({.measure = what + " against exact areas, RMS",
                       .unit = "mm2",
                       .value = std::sqrt(squares / double(truth.mm2.size()))});
    figures.push_back(
        {.measure = what + " against exact areas, most", .unit = "mm2", .value = most});
}

} // namespace

std::vector<Figure> measure_exact(const BenchFiles& files, const Options& options)
{
    const Study study = read_study(files.area_study());
    const PreparedScene scene(study);
    const LampView view = scene.view_of(lamp, study.sampling);
    const ExactView exact_view = scene.exact_view_of(lamp, study.sampling.touch);
    std::vector<TriangleMesh> others;
    for (const Surface& surface : study.surfaces)
        if (surface.role == Role::opaque)
            others.push_back(surface.mesh);
    const ZBuffer picture(study.surfaces[SurfaceId{0}].mesh, others, pixel);
    const auto directions = every(directions_of_field(study, degrees(5)), options.quick ? 16 : 1);

    const Way exact =
        way_of(directions, [&](const Direction& d) { return exact_view.toward(d).visible; });
    const Way sampled =
        way_of(directions, [&](const Direction& d) { return seen_toward(view, d).visible; });
    const Way drawn =
        way_of(directions, [&](const Direction& d) { return picture.visible_toward(d); });
    const Way bare =
        way_of(directions, [&](const Direction& d) { return seen_toward(view, d).lens; });

    double hidden = 0, partly = 0;
    for (std::size_t i = 0; i < exact.mm2.size(); ++i) {
        partly += exact.mm2[i] < bare.mm2[i] - 1 && exact.mm2[i] > 1 ? 1 : 0;
        hidden += exact.mm2[i] <= 1 ? 1 : 0;
    }
    const auto share = 100 / double(directions.size());
    std::vector<Figure> figures{
        {.measure = "directions that see the lamp partly hidden",
         .unit = "%",
         .value = partly * share},
        {.measure = "directions that do not see it", .unit = "%", .value = hidden * share},
        {.measure = "exact area", .unit = "ms CPU a direction", .value = exact.ms_a_direction},
        {.measure = "sweep", .unit = "ms CPU a direction", .value = sampled.ms_a_direction},
        {.measure = "picture of 0.5 mm pixels",
         .unit = "ms CPU a direction",
         .value = drawn.ms_a_direction},
    };
    add_error("sweep", sampled, exact, figures);
    add_error("picture", drawn, exact, figures);
    return figures;
}

} // namespace glim::bench
