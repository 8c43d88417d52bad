#pragma once

#include "judgement/session.h"
#include "remedy/added_lamp_needs.h"
#include "remedy/added_lamp_study.h"

namespace glim {

/// Measures lenses of an added lamp where they lie, as checks do: what is in view, less what the
/// meshes' accuracy may take.
class LensGauge {
public:
    /// A study with the lamp, whose lens gives way to others.
    explicit LensGauge(StudyWithLamp with);

    Session& session() { return session_; }
    const Session& session() const { return session_; }
    LampId lamp() const { return lamp_; }

    void put(TriangleMesh lens); ///< vehicle frame

    /// How well the lens there meets each need that asks an area: what is surely in view, as a
    /// share of what is asked. Of the lamp and of its mirror image the lesser one. Rays no denser
    /// than `feature`, one of them enough for a coarse look.
    std::vector<double> met_shares(std::span<const NeedLook> looks, std::span<const AreaNeed> needs,
                                   Length feature, const Workers& workers) const;

    /// What is seen of it on the mean over level directions all around, every 15 degrees.
    Area in_sight() const;

private:
    Area surely_in_view(const LampView& view, const std::vector<Standing>& obstacles,
                        const Direction& toward) const;

    LampId lamp_;
    SurfaceId lens_;
    Session session_;
};

} // namespace glim
