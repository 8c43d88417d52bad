#pragma once

#include "model/study.h"
#include "visibility/prepared_scene.h"

namespace glim::shapes {

/// A study in memory: one lamp on the left of a vehicle that drives along +x (y left, z up), the
/// ground at z = -800. Outboard (+H) is +y.
Study lamp_alone(TriangleMesh lit);
/// The same with surfaces in the way; `mirror` for all of them.
Study lamp_behind(TriangleMesh lit, std::vector<TriangleMesh> obstacles,
                  MirrorRule mirror = MirrorRule::no);

/// The study's first lamp, drawn, with its frame.
class Watched {
public:
    explicit Watched(Study study);
    SeenArea sampled(double h_deg, double v_deg) const;
    /// The same with bounds that contours prove.
    SeenArea certified(double h_deg, double v_deg) const;
    double exact_mm2(double h_deg, double v_deg) const;
    Direction toward(double h_deg, double v_deg) const;
    const LampView& view() const { return view_; }
    const ExactView& exact() const { return exact_; }
    Certificate certificate(std::span<const Direction> directions) const;

private:
    std::unique_ptr<Study> study_; ///< where it is must not change: the scene points to it
    PreparedScene scene_;
    LampView view_;
    ExactView exact_;
};

} // namespace glim::shapes
