#pragma once

#include "bench/bench_files.h"
#include "bench/options.h"
#include "geometry/direction.h"
#include "model/study.h"

namespace glim::bench {

// What is measured at one size of body. Each runs in a process of its own.

/// Reading the body as OBJ and as binary STL.
std::vector<Figure> measure_reading(const BenchFiles& files);

/// Reading a large photometric file, and asking it for intensities.
std::vector<Figure> measure_photometry();

/// Building the ray trees, the sweep over the field, and the same rays asked otherwise.
std::vector<Figure> measure_rays(const BenchFiles& files, const Options& options);

/// The exact area, and how far the sampled one and a picture's are from it.
std::vector<Figure> measure_exact(const BenchFiles& files, const Options& options);

/// The certificate for all directions, the sweep by it, and whether its bounds hold.
std::vector<Figure> measure_certificate(const BenchFiles& files, unsigned threads,
                                        const Options& options);

/// Changing one of 20 parts and looking again.
std::vector<Figure> measure_session(const BenchFiles& files, unsigned threads);

/// Relief, added lamp and moved lamp, where the skin hides a little too much.
std::vector<Figure> measure_remedies(const BenchFiles& files, unsigned threads);

/// Builds within tolerances, from deciding directions and over the field.
std::vector<Figure> measure_tolerances(const BenchFiles& files, std::size_t builds,
                                       unsigned threads);

/// File to verdict, as the command `check` does it.
std::vector<Figure> measure_whole_run(const std::filesystem::path& file, const BenchStudy& study,
                                      unsigned threads);

/// File to report, as the command `report` does it: a theme with two lamps.
std::vector<Figure> measure_demo_report(unsigned threads);
std::vector<Figure> measure_body_report(const BenchFiles& files, unsigned threads);

/// The directions of a look over -45..80 by +-15 degrees.
std::vector<Direction> directions_of_field(const Study& study, Angle step);

/// Every so many-th of them, at least one.
std::vector<Direction> every(const std::vector<Direction>& directions, std::size_t nth);

/// "sweep, 2 threads"
std::string with_threads(const std::string& measure, unsigned threads);

} // namespace glim::bench
