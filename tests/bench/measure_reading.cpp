#include "bench/measures.h"

#include "bench/stopwatch.h"
#include "input/read_mesh.h"

#include <algorithm>

namespace glim::bench {

namespace {

constexpr int times = 3;

/// The least of several, because everything that disturbs adds.
Figure reading_of(const std::string& what, const std::filesystem::path& file)
{
    double least = 0;
    for (int i = 0; i < times; ++i) {
        const Stopwatch watch;
        const MeshFile mesh = read_mesh(file, file.string());
        const double took = watch.thread_cpu_s();
        least = i == 0 ? took : std::min(least, took);
    }
    return {.measure = "reading " + what, .unit = "s CPU", .value = least};
}

} // namespace

std::vector<Figure> measure_reading(const BenchFiles& files)
{
    return {reading_of("OBJ", files.obj), reading_of("binary STL", files.stl)};
}

} // namespace glim::bench
