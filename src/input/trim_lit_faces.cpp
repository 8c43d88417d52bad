#include "input/trim_lit_faces.h"

#include "geometry/inset.h"
#include "input/lit_faces.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// Cutting in planes and putting together again moves an area by less than this share.
constexpr double area_grain = 1e-9;

TriangleMesh joined(const Study& study, const std::vector<SurfaceId>& surfaces)
{
    TriangleMesh all;
    for (const SurfaceId id : surfaces) {
        const TriangleMesh& mesh = study.surfaces[id].mesh;
        const auto offset = static_cast<std::uint32_t>(all.points.size());
        all.points.insert(all.points.end(), mesh.points.begin(), mesh.points.end());
        for (const Facet& f : mesh.facets)
            all.facets.push_back({f[0] + offset, f[1] + offset, f[2] + offset});
    }
    return all;
}

bool have_one_mirror_rule(const Study& study, const std::vector<SurfaceId>& surfaces)
{
    return std::all_of(surfaces.begin(), surfaces.end(), [&](SurfaceId id) {
        return study.surfaces[id].mirror == study.surfaces[surfaces.front()].mirror;
    });
}

struct Cut {
    const LampDraft& draft;
    Complaints& complaints;

    void complain(const std::string& what, const std::string& remedy) const
    {
        complaints.add(draft.trim_place, "lamp `" + draft.lamp.name + "`: " + what, remedy);
    }
};

/// What the trim leaves; nothing after a complaint.
std::optional<TriangleMesh> part_left(const Cut& cut, const TriangleMesh& whole,
                                      const Vehicle& vehicle)
{
    const Trim& trim = *cut.draft.lamp.trim;
    const std::optional<Direction> way = lit_way(cut.draft.lamp, vehicle);
    if (!way && !trim.curve.empty()) {
        cut.complain("the axis along which its curve is projected is not known",
                     "write `axis` for the lamp");
        return std::nullopt;
    }
    if (trim.inset && area_of(inset(whole, *trim.inset)) >= (1 - area_grain) * area_of(whole)) {
        cut.complain("its inset cuts nothing, for the lit surfaces have no open edge",
                     "select the outer skin alone, or cut by `curve` or `box`");
        return std::nullopt;
    }
    std::optional<TriangleMesh> left = trimmed(whole, trim, way.value_or(vehicle.forward));
    if (!left)
        cut.complain("its curve crosses itself or encloses nothing, seen along the lamp's axis",
                     "write the points in order round the outline");
    else if (left->facets.empty()) {
        cut.complain("its trim leaves nothing of the lit surfaces",
                     "correct `inset`, `curve` or `box`; curve and box are in mm, in the axes of "
                     "the vehicle");
        return std::nullopt;
    }
    return left;
}

Warning told(const Cut& cut, Area left, Area whole)
{
    return {cut.draft.trim_place,
            "lamp `" + cut.draft.lamp.name + "` shines from " +
                std::to_string(std::lround(in_mm2(left))) + " of the " +
                std::to_string(std::lround(in_mm2(whole))) +
                " mm2 of its lit surfaces, as its trim says",
            {}};
}

void trim_one(const Cut& cut, Lamp& lamp, Study& study)
{
    if (!have_one_mirror_rule(study, lamp.emits)) {
        cut.complain("its lit surfaces are mirrored by different rules, so that no one trim fits",
                     "write two lamps, or the same `mirror` for the surfaces");
        return;
    }
    const TriangleMesh whole = joined(study, lamp.emits);
    if (lamp.emits.empty() || whole.facets.empty())
        return;
    std::optional<TriangleMesh> left = part_left(cut, whole, study.vehicle);
    if (!left)
        return;
    study.warnings.push_back(told(cut, area_of(*left), area_of(whole)));
    Surface part = study.surfaces[lamp.emits.front()];
    part.name = std::string(lit_part_prefix) + lamp.name;
    part.mesh = std::move(*left);
    part.lit_part_of = lamp.emits.front();
    lamp.approved_with.insert(lamp.approved_with.end(), lamp.emits.begin(), lamp.emits.end());
    lamp.emits = {study.surfaces.add(std::move(part))};
}

} // namespace

void trim_lit_faces(const std::vector<LampDraft>& lamps, Study& study, Complaints& complaints)
{
    for (std::uint32_t i = 0; i < lamps.size(); ++i)
        if (lamps[i].lamp.trim && !lamps[i].lamp.emits.empty())
            trim_one(Cut{lamps[i], complaints}, study.lamps[LampId{i}], study);
}

} // namespace glim
