#include "bench/measures.h"

#include "bench/stopwatch.h"
#include "input/read_ies.h"
#include "model/mounting.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace glim::bench {

namespace {

constexpr int times = 5;
constexpr int horizontals = 721;
constexpr int verticals = 361;
constexpr std::size_t directions = 4000;

/// A type C file of half a degree, written with three decimals as such files are.
std::string large_file()
{
    std::string text = "IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 361 721 1 2 0 0 0\n1 1 1\n";
    for (int v = 0; v < verticals; ++v)
        text += std::to_string(0.5 * v) + "\n";
    for (int h = 0; h < horizontals; ++h)
        text += std::to_string(0.5 * h) + "\n";
    for (int h = 0; h < horizontals; ++h)
        for (int v = 0; v < verticals; ++v) {
            const double candela = 300 + 200 * std::sin(0.01 * v) + 50 * std::cos(0.01745 * h);
            std::string word = std::to_string(candela);
            word.resize(word.size() - 3);
            text += word + (v % 10 == 9 ? "\n" : " ");
        }
    return text;
}

template <class Work>
double least_ms(const Work& work)
{
    double least = 0;
    for (int i = 0; i < times; ++i) {
        const Stopwatch watch;
        work();
        const double took = 1000 * watch.thread_cpu_s();
        least = i == 0 ? took : std::min(least, took);
    }
    return least;
}

double sum_toward_all(const Photometry& photometry)
{
    const Eigen::Matrix3d turn = file_from_lamp(
        {.beam = BeamAxis::nadir, .roll = {}, .measured_on = Side::left}, ReferenceAxis::forward);
    double sum = 0;
    for (std::size_t i = 0; i < directions; ++i) {
        const Bearing bearing{degrees(-45 + 125.0 * double(i) / directions),
                              degrees(-15 + 30.0 * double(i % 61) / 61)};
        sum += in_candelas(intensity_toward(photometry.grid, turn, bearing).value());
    }
    return sum;
}

} // namespace

std::vector<Figure> measure_photometry()
{
    const std::string text = large_file();
    Photometry photometry;
    const double reading = least_ms([&] {
        photometry =
            read_ies(text, "large.ies", [](const std::string&) { return std::nullopt; }).photometry;
    });
    double sum = 0;
    const double evaluating = least_ms([&] { sum = sum_toward_all(photometry); });
    const double integrating = least_ms([&] { sum += in_lumens(flux_of(photometry.grid)); });
    if (!(sum > 0))
        throw std::logic_error("the large photometric file is dark");
    return {{.measure = "reading a photometric file of 721 x 361",
             .unit = "ms CPU",
             .value = reading,
             .target = "at most 50"},
            {.measure = "intensity in 4000 directions",
             .unit = "ms CPU",
             .value = evaluating,
             .target = "at most 5"},
            {.measure = "flux of 721 x 361", .unit = "ms CPU", .value = integrating}};
}

} // namespace glim::bench
