#include "bench/own_process.h"

#include <cstdio>
#include <exception>
#include <sstream>
#include <stdexcept>

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace glim::bench {

namespace {

constexpr std::size_t kilobyte = 1024;

/// One figure a line, its fields with tabs between; the value as hexadecimal, which loses nothing.
std::string lines_of(const std::vector<Figure>& figures)
{
    std::string text;
    for (const Figure& f : figures) {
        char value[64];
        std::snprintf(value, sizeof value, "%a", f.value);
        text += f.measure + "\t" + f.unit + "\t" + value + "\t" + f.target + "\n";
    }
    return text;
}

std::vector<Figure> figures_in(const std::string& text)
{
    std::vector<Figure> figures;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        std::istringstream fields(line);
        Figure f;
        std::string value;
        std::getline(fields, f.measure, '\t');
        std::getline(fields, f.unit, '\t');
        std::getline(fields, value, '\t');
        std::getline(fields, f.target, '\t');
        std::sscanf(value.c_str(), "%la", &f.value);
        figures.push_back(std::move(f));
    }
    return figures;
}

[[noreturn]] void measure_and_leave(const std::function<std::vector<Figure>()>& measure, int out)
{
    int code = 0;
    try {
        const std::string text = lines_of(measure());
        for (std::size_t at = 0; at < text.size();) {
            const ssize_t put = write(out, text.data() + at, text.size() - at);
            if (put <= 0)
                throw std::runtime_error("cannot tell the figures");
            at += static_cast<std::size_t>(put);
        }
    } catch (const std::exception& error) {
        std::fprintf(stderr, "bench: %s\n", error.what());
        code = 1;
    }
    _exit(code);
}

std::string all_of(int in)
{
    std::string text;
    char part[4096];
    for (ssize_t got = 0; (got = read(in, part, sizeof part)) > 0;)
        text.append(part, static_cast<std::size_t>(got));
    return text;
}

} // namespace

Outcome in_own_process(const std::function<std::vector<Figure>()>& measure)
{
    int ends[2];
    if (pipe(ends) != 0)
        throw std::runtime_error("no pipe to be had");
    const pid_t child = fork();
    if (child < 0)
        throw std::runtime_error("no process to be had");
    if (child == 0) {
        close(ends[0]);
        measure_and_leave(measure, ends[1]);
    }
    close(ends[1]);
    Outcome outcome{.figures = figures_in(all_of(ends[0])), .peak_bytes = 0};
    close(ends[0]);
    int status = 0;
    rusage use{};
    wait4(child, &status, 0, &use);
    if (!WIFEXITED(status) || WEXITSTATUS(status) != 0)
        throw std::runtime_error("a measure failed");
    outcome.peak_bytes = static_cast<std::size_t>(use.ru_maxrss) * kilobyte;
    return outcome;
}

} // namespace glim::bench
