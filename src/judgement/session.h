#pragma once

#include "judgement/findings.h"
#include "machine/workers.h"
#include "visibility/prepared_scene.h"

namespace glim {

/// How much is found out besides outcomes.
enum class Explained {
    all_of_it,      ///< what hides, where an added lamp would be needed, where outcomes change
    outcomes_alone, ///< the figures that they rest on, no more
};

/// A study that stays prepared while surfaces are changed or moved and checked again: the ground
/// for live work and for sweeps.
///
///     Session session(study);
///     session.replace(nose, reshaped);
///     const Findings findings = session.check(session.all_checks(), degrees(5), workers);
class Session {
public:
    explicit Session(Study study);
    Session(const Session&) = delete;
    Session& operator=(const Session&) = delete;

    const Study& study() const { return study_; }
    const PreparedScene& scene() const { return scene_; }
    std::vector<std::size_t> all_checks() const;

    void replace(SurfaceId surface, TriangleMesh mesh); ///< vehicle frame, mm
    /// Vehicle frame from where the surface was drawn.
    void place(SurfaceId surface, const Placement& placement);
    /// The same for all that the lamp emits with, its declared centre and axis.
    void place(LampId lamp, const Placement& placement);

    /// Judges these checks (places in Study::checks), looking every `step`. Throws InputError where
    /// lamps that should answer together have different axes, Stopped where it was stopped.
    Findings check(std::span<const std::size_t> checks, Angle step, const Workers& workers,
                   Explained explained = Explained::all_of_it) const;

private:
    Study study_;
    Slots<LampId, Lamp> drawn_lamps_;
    PreparedScene scene_;
};

} // namespace glim
