#include "generator/demo_files.h"

#include "generator/body_net.h"
#include "generator/body_panels.h"
#include "generator/front_parts.h"
#include "generator/indicator_light.h"
#include "generator/lamp_unit.h"
#include "generator/obj_file.h"
#include "generator/wheel_and_cab.h"

namespace glim::demo {
namespace {

constexpr ArchFlare flare{18, 75};

/// Deepest along the flank's edge that a view from 45 degrees across the nose grazes, and straight
/// into that view's shadow; nothing on the panel's own border.
Swelling nose_relief()
{
    constexpr double depth = 18; ///< mm
    const Vector inward = Vector(1, -1, 0).normalized();
    return {{1.5, 4.8}, {3.5, 6.0}, {4.1, 6.9}, {5.42, 9.35}, depth * inward};
}

/// Forward and a little outboard, beside the lamp's opening from the bumper to the wing's top.
Swelling wing_shoulder()
{
    return {{9.3, 2.6}, {9.85, 5.2}, {10.3, 7.8}, {13, 10.6}, {-230, 60, 0}};
}

Skin skin_with(const std::vector<Swelling>& swellings)
{
    std::vector<Push> pushes{pushed_by(flare)};
    for (const Swelling& s : swellings)
        pushes.push_back(pushed_by(s));
    return {body_surface(), std::move(pushes)};
}

std::vector<Part> joined(std::vector<Part> parts, const std::vector<std::vector<Part>>& more)
{
    for (const std::vector<Part>& group : more)
        parts.insert(parts.end(), group.begin(), group.end());
    return parts;
}

std::vector<Part> body(const Skin& skin)
{
    return joined(
        {{"bonnet", "body_paint", bonnet_panel(skin)}, intake_screen(skin), tow_eye_cover(skin)},
        {plate_parts(), wheel_parts(), cab_parts(skin)});
}

std::vector<Part> nose(const Skin& skin)
{
    return joined({{"nose", "body_paint", nose_panel(skin)}}, {grille_parts(skin)});
}

std::vector<Part> wing(const Skin& skin)
{
    return {{"wing", "body_paint", wing_panel(skin)}, {"bumper", "body_paint", bumper_panel(skin)}};
}

std::vector<Part> added_lamp(const Skin& skin)
{
    constexpr double step = 3;
    const Outline lens =
        rounded({{{126, 704}, 10}, {{236, 704}, 14}, {{242, 744}, 14}, {{126, 744}, 10}}, step);
    return standing_lamp({"added", lens}, from_front(skin, {2, 7.4}));
}

std::vector<Part> side_lamp(const Skin& skin)
{
    constexpr double step = 3;
    const Outline lens =
        rounded({{{-150, 664}, 8}, {{-66, 660}, 10}, {{-66, 686}, 10}, {{-150, 694}, 8}}, step);
    return standing_lamp({"side", lens}, from_side(skin, {11.5, 7}));
}

} // namespace

std::vector<DemoFile> demo_files()
{
    const Skin drawn = skin_with({});
    const Skin relieved = skin_with({nose_relief()});
    const Skin shouldered = skin_with({wing_shoulder()});
    const auto file = [](const std::string& name, const std::string& title,
                         const std::vector<Part>& parts) {
        return DemoFile{name + ".obj", obj_text(title, parts)};
    };
    return {file("body", "bonnet, plate, tow-eye cover, wheel, windscreen", body(drawn)),
            file("nose", "nose as first drawn, with its grille", nose(drawn)),
            file("nose-relieved", "nose with a relief beside the lamp", nose(relieved)),
            file("wing", "wing and bumper as first drawn", wing(drawn)),
            file("wing-shouldered", "wing and bumper with a shoulder", wing(shouldered)),
            file("lamp", "front lamp unit", lamp_unit(drawn)),
            file("added-lamp", "indicator on the nose", added_lamp(drawn)),
            file("side-lamp", "indicator on the shouldered wing", side_lamp(shouldered)),
            file("load-tray", "load tray ahead of the front, folded up", {load_tray()}),
            {"indicator.ies", indicator_ies()}};
}

} // namespace glim::demo
