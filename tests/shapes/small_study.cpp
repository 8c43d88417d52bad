#include "shapes/small_study.h"

namespace glim::shapes {

Study lamp_alone(TriangleMesh lit)
{
    Study study;
    study.file = "in memory";
    study.vehicle.forward = Direction::x();
    study.vehicle.up = Direction::z();
    study.grounds.push_back({"curb", {.on = {0, 0, -800}}});
    Surface lens{.name = "lens",
                 .role = Role::emitting,
                 .mirror = MirrorRule::no,
                 .mesh = std::move(lit),
                 .clear_for = {}};
    const SurfaceId id = study.surfaces.add(std::move(lens));
    Lamp lamp;
    lamp.name = "indicator";
    lamp.side = Side::left;
    lamp.emits = {id};
    study.lamps.add(std::move(lamp));
    return study;
}

Study lamp_behind(TriangleMesh lit, std::vector<TriangleMesh> obstacles, MirrorRule mirror)
{
    Study study = lamp_alone(std::move(lit));
    for (TriangleMesh& mesh : obstacles) {
        const std::string name = "obstacle " + std::to_string(study.surfaces.size());
        study.surfaces.add(Surface{.name = name,
                                   .role = Role::opaque,
                                   .mirror = mirror,
                                   .mesh = std::move(mesh),
                                   .clear_for = {}});
    }
    return study;
}

Watched::Watched(Study study)
    : study_(std::make_unique<Study>(std::move(study))), scene_(*study_),
      view_(scene_.view_of({LampId{0}, false}, study_->sampling)),
      exact_(scene_.exact_view_of({LampId{0}, false}, study_->sampling.touch))
{
}

Direction Watched::toward(double h_deg, double v_deg) const
{
    return direction_of({degrees(h_deg), degrees(v_deg)},
                        {Direction::x(), Direction::y(), Direction::z()});
}

SeenArea Watched::sampled(double h_deg, double v_deg) const
{
    return seen_toward(view_, toward(h_deg, v_deg));
}

Certificate Watched::certificate(std::span<const Direction> directions) const
{
    return scene_.certificate_of({LampId{0}, false}, view_, directions,
                                 Workers{.threads = 1, .stop = {}, .progress = {}});
}

SeenArea Watched::certified(double h_deg, double v_deg) const
{
    const std::array directions = {toward(h_deg, v_deg)};
    const Certificate proof = certificate(directions);
    return seen_toward(view_, directions[0], &proof);
}

double Watched::exact_mm2(double h_deg, double v_deg) const
{
    return in_mm2(exact_.toward(toward(h_deg, v_deg)).visible);
}

} // namespace glim::shapes
