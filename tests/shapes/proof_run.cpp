#include "shapes/proof_run.h"

#include "machine/stop.h"
#include "shapes/saved_scene.h"
#include "shapes/shrink.h"
#include "shapes/two_ways.h"

#include <algorithm>

namespace glim::shapes {

namespace {

std::vector<Compared> compared(const RandomScene& scene)
{
    const LampStanding lamp = lamp_of(scene);
    std::vector<Direction> directions;
    for (const Bearing& bearing : scene.bearings)
        directions.push_back(toward(lamp, bearing));
    const TwoWays ways(study_of(scene), lamp, directions);
    std::vector<Compared> all;
    for (const Direction& direction : directions)
        all.push_back(ways.toward(direction));
    return all;
}

bool any_broken(const std::vector<Compared>& all)
{
    return std::any_of(all.begin(), all.end(), [](const Compared& c) { return !c.broken.empty(); });
}

bool breaks(const RandomScene& scene) { return any_broken(compared(scene)); }

/// Shrinks and saves; the message says what broke and where it lies.
std::string saved_failure(const RandomScene& scene, const std::filesystem::path& failures)
{
    const RandomScene small = shrunk(scene, breaks);
    const Compared worst = compared(small).front();
    const std::filesystem::path folder = failures / ("seed-" + std::to_string(scene.seed));
    std::string message = "seed " + std::to_string(scene.seed);
    for (const std::string& claim : worst.broken)
        message += (message.find(':') == std::string::npos ? ": " : "; ") + claim;
    save_as_study(small, folder, message, worst.by_definition);
    return message + "; see " + (folder / "study.toml").string();
}

/// Below this nothing is hidden but by the last bits of a sum.
constexpr double hidden_mm2 = 1e-9;

void add(ProofResult& result, const Compared& c)
{
    ++result.directions;
    result.hidden += in_mm2(c.seen.lens - c.by_definition) > hidden_mm2 ? 1 : 0;
    result.worst_difference = std::max(result.worst_difference, c.difference());
    if (c.exact.rounding > Area{})
        result.worst_share = std::max(result.worst_share, c.difference() / c.exact.rounding);
    if (c.seen.lens > Area{})
        result.mean_width += (c.seen.high - c.seen.low) / c.seen.lens;
}

struct SceneResult {
    std::vector<Compared> directions;
    std::string failure;
};

} // namespace

ProofResult prove(const ProofRun& run)
{
    std::vector<SceneResult> scenes(run.scenes);
    const bool whole = for_each_index(run.scenes, run.workers, [&](std::size_t i, unsigned) {
        const RandomScene scene = random_scene(run.first_seed + i);
        scenes[i].directions = compared(scene);
        if (any_broken(scenes[i].directions))
            scenes[i].failure = saved_failure(scene, run.failures);
    });
    if (!whole)
        throw Stopped();
    ProofResult result;
    for (const SceneResult& scene : scenes) {
        ++result.scenes;
        for (const Compared& c : scene.directions)
            add(result, c);
        if (!scene.failure.empty())
            result.failures.push_back(scene.failure);
    }
    result.mean_width /= static_cast<double>(std::max<std::size_t>(1, result.directions));
    return result;
}

} // namespace glim::shapes
