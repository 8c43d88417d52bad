#include "proof/read_scene.h"

#include "input/read_study.h"
#include "shapes/random_scene.h"

#include <stdexcept>

namespace glim::shapes {

ReadScene read_scene(const std::filesystem::path& folder)
{
    ReadScene scene{
        .study = read_study(folder / "study.toml"), .lamp = {}, .bearings = {}, .directions = {}};
    scene.lamp.twin = scene.study.lamps[scene.lamp.lamp].paired;
    const RuleRow* const row = scene.study.tables.front().row("asked");
    if (row == nullptr)
        throw std::runtime_error(folder.string() + " has no row \"asked\"");
    for (const FieldRectangle& point : row->field.rectangles) {
        scene.bearings.push_back({point.h_least, point.v_least});
        scene.directions.push_back(toward(scene.lamp, scene.bearings.back()));
    }
    return scene;
}

} // namespace glim::shapes
