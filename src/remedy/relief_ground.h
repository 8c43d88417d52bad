#pragma once

#include "machine/workers.h"
#include "remedy/lamp_eye.h"
#include "remedy/relief_demand.h"
#include "remedy/sight_needs.h"

#include <span>

namespace glim {

/// Everything that a relief is worked out on, made ready once: what may be pushed, where it
/// stands, and the lamps that have to be seen over it.
class ReliefGround {
public:
    /// `study`, `scene` outlive the ground; the scene may change once the eyes are open.
    /// Throws InputError where no surface may be reshaped.
    ReliefGround(const Study& study, const PreparedScene& scene);
    ReliefGround(const ReliefGround&) = delete;
    ReliefGround& operator=(const ReliefGround&) = delete;

    const Study& study() const { return study_; }
    /// The scene frame's zero, vehicle frame.
    const Point& origin() const { return origin_; }
    const std::vector<PushedPatch>& patches() const { return patches_; }
    const std::vector<StandingPatch>& standing() const { return standing_; }
    const std::vector<LampEye>& eyes() const { return eyes_; }

    /// Makes the lamps of all looks ready, as the scene is now. To be called once.
    void open_eyes(const Findings& findings, const Workers& workers);
    /// The eyes of a look's lamps, places in eyes(). Requires: they are open.
    std::vector<std::size_t> eyes_of(const LampLook& look) const;

private:
    const Study& study_;
    const PreparedScene& scene_;
    Point origin_;
    std::vector<PushedPatch> patches_;
    std::vector<StandingPatch> standing_;
    std::vector<LampEye> eyes_;
};

} // namespace glim
