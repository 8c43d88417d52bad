#include "remedy/relief_probe.h"

#include "machine/stop.h"
#include "visibility/blame.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace glim {

namespace {

/// A surface that takes less than this takes nothing.
constexpr Area least_taken = square_millimetres(1e-3);

struct ProbingEye {
    LampView view;
    std::vector<Length> chords; ///< of what stands in the way, in the order of the view's parts
    Length lit_chord;
};

ProbingEye probing_eye(const Study& study, const PreparedScene& scene, const LampStanding& lamp)
{
    ProbingEye eye{scene.view_of(lamp, study.sampling), {}, {}};
    for (const Standing& s : scene.obstacles_of(lamp))
        eye.chords.push_back(study.surfaces[s.surface].chord.error);
    for (const SurfaceId s : study.lamps[lamp.lamp].emits)
        eye.lit_chord = std::max(eye.lit_chord, study.surfaces[s].chord.error);
    return eye;
}

/// A rim moves by no more than the chord errors of what throws it and of what it falls on.
Area doubt_of(const ProbingEye& eye, const SeenArea& seen, const Blame& blame)
{
    Length chord;
    for (std::size_t i = 0; i < blame.parts.size(); ++i)
        if (blame.parts[i].sum() > least_taken)
            chord = std::max(chord, eye.chords[i]);
    return seen.rim * (chord + eye.lit_chord) + seen.outline * eye.lit_chord + seen.expected_error;
}

using EyeKey = std::tuple<std::uint32_t, bool, Obstacles>;

EyeKey key_of(const LampStanding& lamp) { return {lamp.lamp.index, lamp.twin, lamp.obstacles}; }

} // namespace

std::vector<ProbedSight> probed_sights(const Study& study, const PreparedScene& scene,
                                       const std::vector<ReliefDemand>& demands,
                                       const Findings& findings, const Workers& workers)
{
    std::map<EyeKey, ProbingEye> eyes;
    for (const ReliefDemand& demand : demands)
        for (const LampStanding& lamp : findings.looks[demand.look].standings)
            if (!eyes.contains(key_of(lamp)))
                eyes.emplace(key_of(lamp), probing_eye(study, scene, lamp));
    std::vector<ProbedSight> sights(demands.size());
    const Workers silent = workers.silent();
    const bool whole = for_each_index(demands.size(), silent, [&](std::size_t i, unsigned) {
        for (const LampStanding& lamp : findings.looks[demands[i].look].standings) {
            const ProbingEye& eye = eyes.at(key_of(lamp));
            const SeenArea seen = seen_toward(eye.view, demands[i].toward);
            sights[i].visible += seen.visible;
            sights[i].doubt += doubt_of(eye, seen, blame_toward(eye.view, demands[i].toward));
        }
    });
    if (!whole)
        throw Stopped();
    return sights;
}

} // namespace glim
