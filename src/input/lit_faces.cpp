#include "input/lit_faces.h"

#include "input/take_facets.h"

#include <cmath>

namespace glim {

namespace {

std::string percent(double share) { return std::to_string(std::lround(100 * share)) + " %"; }

Complaint complaint_of_inside_out(const SurfaceDraft& draft, const std::string& lamp)
{
    const bool turned = draft.orient == Orient::flip;
    return {draft.orient_place,
            "the facets of `" + draft.surface.name + "` look inward, against the axis of lamp `" +
                lamp + "`" + (turned ? ", after they were turned over" : ""),
            turned ? "take orient = \"flip\" away; their winding is right as it is"
                   : "write orient = \"flip\" to turn them over, or orient = \"as-is\" if they are "
                     "right"};
}

Complaint complaint_of_two_ways(const SurfaceDraft& draft, const std::string& lamp, double against)
{
    return {draft.orient_place,
            percent(against) + " of the lit face `" + draft.surface.name +
                "` looks against the axis of lamp `" + lamp +
                "`: has it two skins, or does it shine both ways?",
            "select the outer skin alone by `component_at` or `facing`, or write orient = "
            "\"as-is\" if all of it shines"};
}

/// Whether the user's own word settles it.
bool settled(Orient orient, double against)
{
    return orient == Orient::as_is || against <= few_against ||
           (orient == Orient::flip && against <= most_against);
}

void orient(SurfaceDraft& draft, const std::string& lamp, const Direction& toward,
            Complaints& complaints)
{
    std::optional<double> against = share_against(draft.surface.mesh, toward);
    if (!against)
        return;
    if (draft.orient == Orient::outward && *against > 0.5) {
        draft.surface.mesh = turned_over(std::move(draft.surface.mesh));
        against = 1 - *against;
    }
    if (settled(draft.orient, *against))
        return;
    const Complaint complaint = *against > most_against
                                    ? complaint_of_inside_out(draft, lamp)
                                    : complaint_of_two_ways(draft, lamp, *against);
    complaints.add(complaint.place, complaint.what, complaint.remedy);
}

/// The reach of all lit surfaces of a lamp; nothing if they could not be read.
std::optional<TriangleMesh> lit_mesh(const std::vector<SurfaceDraft>& surfaces, const Lamp& lamp)
{
    TriangleMesh all;
    for (const SurfaceId id : lamp.emits) {
        const TriangleMesh& mesh = surfaces[id.index].surface.mesh;
        const auto offset = static_cast<std::uint32_t>(all.points.size());
        all.points.insert(all.points.end(), mesh.points.begin(), mesh.points.end());
        for (const Facet& f : mesh.facets)
            all.facets.push_back({f[0] + offset, f[1] + offset, f[2] + offset});
    }
    if (all.facets.empty())
        return std::nullopt;
    return all;
}

Length lateral_of_centroid(const TriangleMesh& mesh, const Vehicle& vehicle)
{
    double area = 0, moment = 0;
    for (std::size_t i = 0; i < mesh.facets.size(); ++i) {
        const double facet_area = area_vector(mesh, i).norm();
        const Point middle = (mesh.corner(i, 0) + mesh.corner(i, 1) + mesh.corner(i, 2)) / 3;
        area += facet_area;
        moment += facet_area * in_mm(vehicle.lateral(middle));
    }
    return millimetres(area > 0 ? moment / area : 0);
}

void check_side(const LampDraft& draft, const TriangleMesh& lit, const Vehicle& vehicle,
                Complaints& complaints)
{
    const std::string lamp = "lamp `" + draft.lamp.name + "` is said to be on the ";
    const std::string axes = ", or correct `forward` and `up` of [vehicle] or of the mesh";
    if (draft.lamp.side == Side::median) {
        const Reach reach = reach_of(lit, vehicle);
        if (reach.left < -median_grain || reach.right < -median_grain)
            complaints.add(draft.side_place,
                           lamp + "median plane, but its lit surface does not reach it",
                           "write the side where it lies" + axes);
        return;
    }
    const Length lateral = lateral_of_centroid(lit, vehicle);
    const bool lies_left = lateral >= millimetres(0);
    if (lies_left == (draft.lamp.side == Side::left))
        return;
    const std::string there = lies_left ? "left" : "right";
    complaints.add(draft.side_place,
                   lamp + (lies_left ? "right" : "left") + ", but its lit surface lies " +
                       std::to_string(std::lround(std::abs(in_mm(lateral)))) + " mm to the " +
                       there + " of the median plane",
                   "write side = \"" + there + "\"" + axes);
}

void check_twins(const std::vector<SurfaceDraft>& surfaces, const LampDraft& draft,
                 Complaints& complaints)
{
    for (const SurfaceId id : draft.lamp.emits)
        if (const Surface& surface = surfaces[id.index].surface;
            draft.lamp.paired && surface.mirror != MirrorRule::yes)
            complaints.add(draft.place,
                           "lamp `" + draft.lamp.name + "` is one of a pair, but its surface `" +
                               surface.name + "` has no twin",
                           "write mirror = \"yes\" for the surface, or take `pair` away");
}

} // namespace

std::optional<double> share_against(const TriangleMesh& mesh, const Direction& toward)
{
    double with = 0, against = 0;
    for (std::size_t i = 0; i < mesh.facets.size(); ++i) {
        const double seen = toward.dot(area_vector(mesh, i));
        (seen > 0 ? with : against) += std::abs(seen);
    }
    if (with + against == 0)
        return std::nullopt;
    return against / (with + against);
}

std::optional<Direction> lit_way(const Lamp& lamp, const Vehicle& vehicle)
{
    const Direction outboard = vehicle.outboard(lamp.side);
    switch (lamp.function) {
    // Counted from the rearward axis, and yet its lens looks sideways.
    case LampFunction::side_indicator:
        return outboard;
    case LampFunction::side_marker:
        return lamp.axis.value_or(outboard);
    case LampFunction::rear_indicator:
    case LampFunction::rear_position:
    case LampFunction::stop:
    case LampFunction::high_stop:
    case LampFunction::rear_fog:
    case LampFunction::reversing:
        return lamp.axis.value_or(-vehicle.forward);
    case LampFunction::end_outline:
    case LampFunction::parking:
        return lamp.axis;
    default:
        return lamp.axis.value_or(vehicle.forward);
    }
}

void orient_lit_faces(std::vector<SurfaceDraft>& surfaces, const std::vector<LampDraft>& lamps,
                      const Vehicle& vehicle, Complaints& complaints)
{
    std::vector<bool> done(surfaces.size());
    for (const LampDraft& draft : lamps) {
        if (!draft.function_known)
            continue;
        const std::optional<Direction> toward = lit_way(draft.lamp, vehicle);
        for (const SurfaceId id : draft.lamp.emits)
            if (toward && !done[id.index]) {
                orient(surfaces[id.index], draft.lamp.name, *toward, complaints);
                done[id.index] = true;
            }
    }
}

void check_lamp_sides(const std::vector<SurfaceDraft>& surfaces,
                      const std::vector<LampDraft>& lamps, const Vehicle& vehicle,
                      Complaints& complaints)
{
    for (const LampDraft& draft : lamps) {
        const std::optional<TriangleMesh> lit = lit_mesh(surfaces, draft.lamp);
        if (draft.side_known && lit)
            check_side(draft, *lit, vehicle, complaints);
        if (vehicle.modelled_side != Side::median)
            check_twins(surfaces, draft, complaints);
    }
}

} // namespace glim
