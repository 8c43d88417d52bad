#include "report/relief_json.h"

#include "model/asked_checks.h"
#include "model/rule.h"
#include "report/rule_sources.h"
#include "words/keys.h"
#include "words/look_words.h"

namespace glim {

namespace {

Json json_of(const Vector& v) { return Json::Array{v.x(), v.y(), v.z()}; }

std::string_view key_of(ReliefBarrier barrier)
{
    switch (barrier) {
    case ReliefBarrier::fixed_part:
        return "fixed_part";
    case ReliefBarrier::max_depth:
        return "max_depth";
    case ReliefBarrier::edges:
        return "edges";
    case ReliefBarrier::room_behind:
        return "room_behind";
    case ReliefBarrier::proof_only:
        break;
    }
    return "proof_only";
}

Json json_of(const ReliefSight& sight, const Relief& relief, const Study& study)
{
    return Json::Object{{"check", study.checks[sight.check].name},
                        {"row", sight.row},
                        {"lamp", label_of(relief.before.looks[sight.look])},
                        {"h_deg", in_degrees(sight.toward.h)},
                        {"v_deg", in_degrees(sight.toward.v)},
                        {"seen_mm2", in_mm2(sight.seen)},
                        {"wanted_mm2", in_mm2(sight.needed)},
                        {"most_mm2", in_mm2(sight.most)},
                        {"depth_mm", sight.depth ? Json(in_mm(*sight.depth)) : Json()}};
}

Json json_of(const LeastDepth& least)
{
    return Json::Object{{"depth_mm", in_mm(least.depth)},
                        {"for_sure_mm", in_mm(least.for_sure)},
                        {"attained", least.attained()},
                        {"height_field", least.height_field},
                        {"nothing_seen_from_under", least.nothing_seen_from_under},
                        {"direction", least.sight},
                        {"surface", least.surface},
                        {"at_mm", json_of(least.place)}};
}

Json json_of(const RoomBehind& room)
{
    return Json::Object{{"distance_mm", in_mm(room.distance)},
                        {"part", room.part},
                        {"from_mm", json_of(room.from)}};
}

Json json_of(const ReliefShape& shape, const Study& study)
{
    Json::Array surfaces;
    for (const ReshapedSurface& surface : shape.surfaces)
        surfaces.push_back(Json::Object{{"surface", study.surfaces[surface.surface].name},
                                        {"push", json_of(surface.push.vector())}});
    return Json::Object{
        {"surfaces", std::move(surfaces)},
        {"deepest_mm", in_mm(shape.deepest)},
        {"deepest_surface", shape.deepest_surface},
        {"deepest_before_mm", json_of(shape.deepest_before)},
        {"deepest_after_mm", json_of(shape.deepest_after)},
        {"touched_mm2", in_mm2(shape.touched)},
        {"volume_mm3", in_mm3(shape.volume)},
        {"box_mm", Json::Array{json_of(shape.box.least), json_of(shape.box.most)}},
        {"steepest_deg", in_degrees(shape.steepest)},
        {"deepest_edge_mm", in_mm(shape.deepest_edge)},
        {"nearest_behind", shape.nearest_behind ? json_of(*shape.nearest_behind) : Json()}};
}

Json json_of(const ReliefLimit& limit)
{
    return Json::Object{{"barrier", key_of(limit.barrier)},
                        {"direction", limit.sight},
                        {"directions", limit.directions},
                        {"reachable_mm2", in_mm2(limit.reachable)},
                        {"part", limit.part}};
}

Json checks_json(const Findings& findings)
{
    Json::Array checks;
    for (const CheckFindings& check : findings.checks) {
        const bool has_area = check.deciding && !check.deciding_verdict().directions.empty();
        checks.push_back(Json::Object{
            {"name", check.name},
            {"outcome", key_of(check.outcome)},
            {"margin_mm2", has_area ? Json(in_mm2(check.deciding_verdict().margin)) : Json()}});
    }
    return checks;
}

} // namespace

Json relief_json(const Relief& relief, const Study& study)
{
    Json::Array sights, limits;
    for (const ReliefSight& sight : relief.sights)
        sights.push_back(json_of(sight, relief, study));
    for (const ReliefLimit& limit : relief.limits)
        limits.push_back(json_of(limit));
    const bool shaped = !relief.shape.surfaces.empty();
    return Json::Object{
        {"caution", caution},
        {"rule_sources",
         rule_sources_json(asked_rows(study, asked_checks(study, study.relief.checks)))},
        {"found", relief.found()},
        {"least", relief.least ? json_of(*relief.least) : Json()},
        {"relief", shaped ? json_of(relief.shape, study) : Json()},
        {"slope_costs", Json::Object{{"depth_mm", in_mm(relief.slope_cost.depth)},
                                     {"touched_mm2", in_mm2(relief.slope_cost.touched)},
                                     {"volume_mm3", in_mm3(relief.slope_cost.volume)}}},
        {"limits", std::move(limits)},
        {"checks_before", checks_json(relief.before)},
        {"checks_after", relief.after ? checks_json(*relief.after) : Json()},
        {"directions_gained", relief.directions_gained},
        {"rounds", relief.rounds},
        {"directions", std::move(sights)}};
}

} // namespace glim
