#include "judgement/offset_parts.h"

#include "geometry/normal_offset.h"
#include "machine/stop.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// Finer is of no use: a hundred millimetres of rim are then off by a square millimetre at most.
constexpr Length finest_step = millimetres(0.02);
/// To either side.
constexpr int most_steps = 64, least_steps = 4;
/// So many triangles of one surface are held ready; of larger ones fewer steps.
constexpr std::size_t most_facets = 4'000'000;

int steps_for(Length widest, std::size_t facets)
{
    const double wanted = std::ceil(widest / finest_step);
    const auto affordable = static_cast<double>(most_facets) /
                            static_cast<double>(2 * std::max<std::size_t>(facets, 1));
    return static_cast<int>(
        std::clamp(std::min(wanted, affordable), double(least_steps), double(most_steps)));
}

} // namespace

OffsetParts::OffsetParts(const Study& study, const PreparedScene& scene, const BuildMoves& moves,
                         const Extents& widest, const Workers& workers)
    : scene_(scene), ladders_(study.surfaces.size())
{
    for (const SurfaceId s : study.surfaces.ids()) {
        const Length most = moves.widest_offset(s, widest);
        if (most <= Length())
            continue;
        const TriangleMesh& mesh = study.surfaces[s].mesh;
        const int steps = steps_for(most, mesh.facets.size());
        const std::vector<Vector> offsets = normal_offsets(mesh);
        Ladder& ladder = ladders_[s];
        ladder.step = most / steps;
        ladder.parts.resize(2 * static_cast<std::size_t>(steps) + 1);
        const bool whole =
            for_each_index(ladder.parts.size(), workers.silent(), [&](std::size_t i, unsigned) {
                const Length by = (static_cast<double>(i) - steps) * ladder.step;
                ladder.parts[i] =
                    std::make_shared<PreparedPart>(offset_by(mesh, offsets, by), -scene.origin());
            });
        if (!whole)
            throw Stopped();
    }
}

const std::shared_ptr<const PreparedPart>& OffsetParts::part(SurfaceId surface, Length offset) const
{
    const Ladder& ladder = ladders_[surface];
    if (ladder.parts.empty())
        return scene_.part_of(surface);
    const std::size_t steps = ladder.parts.size() / 2; // to either side of the middle
    const auto middle = static_cast<double>(steps);
    const double place = std::clamp(std::round(middle + offset / ladder.step), 0.0, 2 * middle);
    return ladder.parts[static_cast<std::size_t>(place)];
}

Length OffsetParts::widest_step() const
{
    Length widest;
    for (const Ladder& ladder : ladders_)
        widest = std::max(widest, ladder.step);
    return widest;
}

} // namespace glim
