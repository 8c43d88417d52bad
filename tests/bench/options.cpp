#include "bench/options.h"

#include <CLI/CLI.hpp>

#include <charconv>

namespace glim::bench {

namespace {

constexpr std::size_t thousand = 1000;
constexpr std::size_t million = thousand * thousand;

/// "10k" -> 10000; nothing if it is no such word.
std::optional<std::size_t> count_in(const std::string& word)
{
    std::size_t count = 0;
    const char* const end = word.data() + word.size();
    const auto [stop, error] = std::from_chars(word.data(), end, count);
    if (error != std::errc{} || count == 0)
        return std::nullopt;
    const std::string unit(stop, end);
    const std::size_t factor = unit == "k" ? thousand : unit == "M" ? million : 1;
    return unit.empty() || factor > 1 ? std::optional(count * factor) : std::nullopt;
}

std::string refusal_of_count(const std::string& word)
{
    return count_in(word) ? std::string() : "`" + word + "` is no count: write 500, 10k or 4M";
}

} // namespace

OptionsOrExit read_options(int count, char** words)
{
    CLI::App app("Measures how fast cornerglim reads, looks and judges on this machine.");
    Options options;
    std::vector<std::string> sizes;
    app.add_option("--triangles", sizes, "sizes of the body, as 10k,1M (default 10k,100k,1M,4M)")
        ->delimiter(',')
        ->check(CLI::Validator(refusal_of_count, "COUNT"));
    app.add_option("--threads", options.threads, "numbers of threads (default 1,2)")
        ->delimiter(',')
        ->check(CLI::Range(1, 1024));
    app.add_option("--only", options.only, "measure alone what holds this word, such as sweep");
    app.add_flag("--quick", options.quick, "10k and 100k triangles, every 5 degrees");
    app.add_flag("--markdown", options.markdown, "print the table as Markdown");
    app.add_option("--csv", options.csv, "write the figures to this file too");
    try {
        app.parse(count, words);
    } catch (const CLI::ParseError& end) {
        return {std::nullopt, app.exit(end) == 0 ? 0 : 2};
    }
    if (sizes.empty())
        sizes = options.quick ? std::vector<std::string>{"10k", "100k"}
                              : std::vector<std::string>{"10k", "100k", "1M", "4M"};
    for (const std::string& size : sizes)
        options.triangles.push_back(*count_in(size));
    if (options.threads.empty())
        options.threads = {1, 2};
    return {options, 0};
}

std::string short_count(std::size_t count)
{
    if (count % million == 0)
        return std::to_string(count / million) + "M";
    if (count % thousand == 0)
        return std::to_string(count / thousand) + "k";
    return std::to_string(count);
}

} // namespace glim::bench
