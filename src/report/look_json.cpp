#include "report/look_json.h"

#include "report/light_json.h"
#include "words/keys.h"
#include "words/look_words.h"

namespace glim {

namespace {

Json vector_json(const Vector& v) { return Json::Array{v.x(), v.y(), v.z()}; }

Json frame_json(const LampFrame& frame)
{
    return Json::Object{{"forward", vector_json(frame.forward.vector())},
                        {"outboard", vector_json(frame.outboard.vector())},
                        {"up", vector_json(frame.up.vector())}};
}

/// One list over all directions of the look.
template <class Figure>
Json listed_over(const LampLook& look, const Figure& figure)
{
    Json::Array all;
    for (std::size_t at = 0; at < look.toward.size(); ++at)
        all.push_back(figure(at));
    return all;
}

Json exact_json(const LampLook& look)
{
    Json::Array all;
    for (std::size_t at = 0; at < look.toward.size(); ++at) {
        if (!look.exact[at])
            continue;
        const SeenArea& sampled = look.seen[at];
        all.push_back(Json::Object{{"at", at},
                                   {"rounding_mm2", in_mm2(look.exact[at]->rounding)},
                                   {"sampled_visible_mm2", in_mm2(sampled.visible)},
                                   {"sampled_low_mm2", in_mm2(sampled.low)},
                                   {"sampled_high_mm2", in_mm2(sampled.high)},
                                   {"sampled_expected_error_mm2", in_mm2(sampled.expected_error)}});
    }
    return all;
}

Json directions_json(const LampLook& look)
{
    const auto over = [&](const auto& figure) { return listed_over(look, figure); };
    return Json::Object{
        {"h_deg", over([&](std::size_t at) { return in_degrees(look.toward[at].h); })},
        {"v_deg", over([&](std::size_t at) { return in_degrees(look.toward[at].v); })},
        {"lens_mm2", over([&](std::size_t at) { return in_mm2(look.seen[at].lens); })},
        {"approved_mm2", over([&](std::size_t at) { return in_mm2(look.seen[at].approved); })},
        {"visible_mm2", over([&](std::size_t at) { return in_mm2(look.visible(at)); })},
        {"low_mm2", over([&](std::size_t at) { return in_mm2(look.low(at)); })},
        {"high_mm2", over([&](std::size_t at) { return in_mm2(look.high(at)); })},
        {"hidden_low_mm2", over([&](std::size_t at) { return in_mm2(look.hidden_low(at)); })},
        {"hidden_high_mm2", over([&](std::size_t at) { return in_mm2(look.hidden_high(at)); })},
        {"mesh_error_mm2", over([&](std::size_t at) { return in_mm2(look.mesh_error[at]); })},
        {"certified", over([&](std::size_t at) { return look.seen[at].certified; })},
        {"expected_error_mm2", over([&](std::size_t at) { return in_mm2(uncertainty(look, at)); })},
    };
}

} // namespace

Json look_json(const LampLook& look)
{
    return Json::Object{{"name", label_of(look)},
                        {"lamp", look.name},
                        {"function", key_of(look.function)},
                        {"side", key_of(look.side)},
                        {"surface_basis", key_of(look.surface_basis)},
                        {"twin", look.twin},
                        {"twin_is_alike", look.twin_is_alike},
                        {"obstacles", key_of(look.obstacles)},
                        {"axis", key_of(look.axis)},
                        {"frame", frame_json(look.frame)},
                        {"axis_turned_deg", in_degrees(look.axis_turned)},
                        {"centre_mm", vector_json(look.centre)},
                        {"centre_assumed", look.centre_assumed},
                        {"state", look.state},
                        {"state_stands_in", look.state_stands_in},
                        {"axis_height_mm", in_mm(look.axis_height)},
                        {"lit_face_mm2", in_mm2(look.lit_face)},
                        {"directions", directions_json(look)},
                        {"light", look_light_json(look)},
                        {"exact", exact_json(look)}};
}

} // namespace glim
