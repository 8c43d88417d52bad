#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace glim::bench {

/// What is to be measured, and how the figures are to be shown.
struct Options {
    std::vector<std::size_t> triangles; ///< of the body, one run a size
    std::vector<unsigned> threads;
    std::string only;      ///< measure what holds this word alone; all if empty
    std::string csv;       ///< a file to write as well; none if empty
    bool quick = false;    ///< small bodies, looked at every 5 degrees: shows that all works
    bool markdown = false; ///< the table as docs/performance.md has it
};

/// Reads the command line. Where nothing is to be measured (help was asked for, or something is
/// wrong) the words are printed and the exit code given instead.
struct OptionsOrExit {
    std::optional<Options> options;
    int exit_code = 0;
};
OptionsOrExit read_options(int count, char** words);

/// 10000 -> "10k", 4000000 -> "4M", 1234 -> "1234".
std::string short_count(std::size_t count);

} // namespace glim::bench
