// proof_scenes [scenes [first-seed [threads]]]: the program held against the definition in any
// number of random scenes. Shrunk failures go to random-scenes in the build folder.

#include "machine/progress_line.h"
#include "machine/stop.h"
#include "shapes/proof_run.h"

#include <charconv>
#include <cstdio>
#include <optional>
#include <string_view>

using namespace glim;
using namespace glim::shapes;

namespace {

template <class Number>
std::optional<Number> number(std::string_view text)
{
    Number value{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size())
        return std::nullopt;
    return value;
}

/// None where an argument is no number.
std::optional<ProofRun> run_of(int count, char** arguments)
{
    ProofRun run;
    run.failures = std::string(GLIM_BINARY_DIR) + "/random-scenes";
    if (count > 4)
        return std::nullopt;
    for (int i = 1; i < count; ++i) {
        const auto value = number<std::uint64_t>(arguments[i]);
        if (!value)
            return std::nullopt;
        if (i == 1)
            run.scenes = *value;
        if (i == 2)
            run.first_seed = *value;
        if (i == 3)
            run.workers.threads = static_cast<unsigned>(*value);
    }
    return run;
}

void print(const ProofResult& result)
{
    for (const std::string& failure : result.failures)
        std::printf("%s\n", failure.c_str());
    std::printf("%zu scenes, %zu directions, %zu of them with something hidden\n", result.scenes,
                result.directions, result.hidden);
    std::printf("exact area against the definition: at worst %.3g mm2 off, %.3g of the stated "
                "rounding\n",
                in_mm2(result.worst_difference), result.worst_share);
    std::printf("bounds lie %.3g of the lens apart on average\n", result.mean_width);
    std::printf("%zu scenes break a claim\n", result.failures.size());
}

} // namespace

int main(int count, char** arguments)
{
    std::optional<ProofRun> run = run_of(count, arguments);
    if (!run) {
        std::fputs("proof_scenes [scenes [first-seed [threads]]]: whole numbers\n", stderr);
        return 2;
    }
    const StopOnSignal stop;
    ProgressLine line;
    run->workers.stop = stop.token();
    run->workers.progress = line.telling("proving", "scenes");
    try {
        const ProofResult result = prove(*run);
        line.erase();
        print(result);
        return result.failures.empty() ? 0 : 1;
    } catch (const Stopped& stopped) {
        line.erase();
        std::fprintf(stderr, "%s\n", stopped.what());
        return 130;
    }
}
