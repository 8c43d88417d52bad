#include "bench/measures.h"
#include "bench/own_process.h"
#include "machine/temporary_folder.h"
#include "machine/whole_file.h"

#include <cstdio>
#include <exception>
#include <functional>
#include <thread>

#include <stdlib.h>

using namespace glim;
using namespace glim::bench;

namespace {

constexpr double bytes_allowed_a_triangle = 200;
constexpr double bytes_allowed_besides = 50e6;

constexpr int step_deg = 1;
constexpr int quick_step_deg = 5;
constexpr std::size_t all_builds = 10'000;
constexpr std::size_t quick_builds = 64;

void tell(std::size_t triangles, const std::string& what)
{
    std::fprintf(stderr, "bench: %s triangles: %s\n", short_count(triangles).c_str(), what.c_str());
}

/// Wall times say little on a machine that does other work meanwhile.
std::string machine_words()
{
    double load = 0;
    getloadavg(&load, 1);
    return std::to_string(std::thread::hardware_concurrency()) +
           " cores; other work in the minute before the start: " + shown(load) + " of them";
}

/// The figures of one size as they come.
class Collector {
public:
    Collector(std::size_t triangles, std::string only)
        : all_{.triangles = triangles, .figures = {}}, only_(std::move(only))
    {
    }

    /// The peak memory of the process that measured; 0 where it is not asked for.
    std::size_t measure(const std::string& what, const std::function<std::vector<Figure>()>& work)
    {
        if (what.find(only_) == std::string::npos)
            return 0;
        tell(all_.triangles, what);
        Outcome outcome = in_own_process(work);
        for (Figure& figure : outcome.figures)
            add(std::move(figure));
        return outcome.peak_bytes;
    }

    void add(Figure figure)
    {
        for (const Figure& known : all_.figures)
            if (known.measure == figure.measure && known.unit == figure.unit)
                return;
        all_.figures.push_back(std::move(figure));
    }

    const FiguresOfSize& all() const { return all_; }

private:
    FiguresOfSize all_;
    std::string only_; ///< what is measured holds this word
};

void add_memory(Collector& figures, const std::string& what, std::size_t peak,
                std::size_t triangles)
{
    if (peak == 0) // not asked for
        return;
    const double allowed = bytes_allowed_a_triangle * double(triangles) + bytes_allowed_besides;
    figures.add({.measure = "most memory, " + what, .unit = "MB", .value = double(peak) / 1e6});
    figures.add({.measure = "most memory, " + what,
                 .unit = "of what is allowed",
                 .value = double(peak) / allowed,
                 .target = "at most 1"});
}

FiguresOfSize measure_size(std::size_t triangles, const Options& options)
{
    const test::TemporaryFolder folder;
    Collector figures(triangles, options.only);
    const BenchFiles files = bench_files_in(folder.path());
    for (Figure& written :
         write_bench_files(triangles, options.quick ? quick_step_deg : step_deg, files))
        figures.add(std::move(written));
    figures.measure("reading", [&] { return measure_reading(files); });
    figures.measure("photometry", measure_photometry);
    for (const unsigned threads : options.threads) {
        for (const BenchStudy& study : bench_studies) {
            const std::string what = "file to verdict, " + std::string(study.what);
            const std::size_t peak = figures.measure(with_threads(what, threads), [&] {
                return measure_whole_run(files.of(study), study, threads);
            });
            add_memory(figures, what, peak, triangles);
        }
        figures.measure(with_threads("replacing a part", threads),
                        [&] { return measure_session(files, threads); });
        figures.measure(with_threads("remedies", threads),
                        [&] { return measure_remedies(files, threads); });
        figures.measure(with_threads("tolerances", threads), [&] {
            return measure_tolerances(files, options.quick ? quick_builds : all_builds, threads);
        });
        figures.measure(with_threads("file to report, two lamps", threads),
                        [&] { return measure_body_report(files, threads); });
        if (!options.quick)
            figures.measure(with_threads("file to report, demo", threads),
                            [&] { return measure_demo_report(threads); });
    }
    figures.measure("rays", [&] { return measure_rays(files, options); });
    for (const unsigned threads : options.threads)
        figures.measure(with_threads("certificate", threads),
                        [&] { return measure_certificate(files, threads, options); });
    figures.measure("exact areas", [&] { return measure_exact(files, options); });
    return figures.all();
}

int run(const Options& options)
{
    const std::string machine = machine_words();
    std::vector<FiguresOfSize> sizes;
    for (const std::size_t triangles : options.triangles)
        sizes.push_back(measure_size(triangles, options));
    std::fputs((machine + "\n\n" + table_of(sizes, options.markdown)).c_str(), stdout);
    if (!options.csv.empty())
        write_file_atomically(options.csv, csv_of(sizes), IfThere::replace);
    return 0;
}

} // namespace

int main(int count, char** words)
{
    try {
        const OptionsOrExit read = read_options(count, words);
        return read.options ? run(*read.options) : read.exit_code;
    } catch (const std::exception& error) {
        std::fprintf(stderr, "bench: %s\n", error.what());
        return 3;
    }
}
