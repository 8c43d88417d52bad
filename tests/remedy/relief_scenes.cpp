#include "remedy/relief_scenes.h"

#include "judgement/made_rules.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

namespace glim::test {

TriangleMesh strip(const std::vector<std::array<double, 2>>& profile, double y_least, double y_most)
{
    TriangleMesh mesh;
    for (const auto& [x, z] : profile) {
        mesh.points.emplace_back(x, y_least, z);
        mesh.points.emplace_back(x, y_most, z);
    }
    for (std::uint32_t i = 0; i + 3 < mesh.points.size(); i += 2) {
        mesh.facets.push_back({i, i + 2, i + 3});
        mesh.facets.push_back({i, i + 3, i + 1});
    }
    return mesh;
}

TriangleMesh wedge(double ridge_z, double y_least, double y_most)
{
    return strip({{100, -200}, {200, ridge_z}, {300, -200}}, y_least, y_most);
}

TriangleMesh round_nose(double top_z, int facets)
{
    std::vector<std::array<double, 2>> profile;
    for (int i = 0; i <= facets; ++i) {
        const Angle a = degrees(180 - 180.0 * i / facets);
        profile.push_back({300 + 100 * cos(a), top_z - 100 + 100 * sin(a)});
    }
    return strip(profile, -300, 300);
}

Study lamp_behind_hump(TriangleMesh hump, double least_mm2, std::array<double, 4> field)
{
    Study study = shapes::lamp_behind(shapes::plate({0, 0, 0}, 100, 50, 10), {std::move(hump)},
                                      MirrorRule::no);
    Surface& surface = study.surfaces[SurfaceId{1}];
    surface.name = "hump";
    surface.reshape = Reshape{.push = -Direction::z(), .edges_fixed_in = {}};
    return shapes::asking(std::move(study), "row",
                          {shapes::made_row("row", LeastArea{square_millimetres(least_mm2)},
                                            field[0], field[1], field[2], field[3])});
}

void add_fixed(Study& study, const std::string& name, TriangleMesh mesh)
{
    study.surfaces.add(
        Surface{.name = name, .mirror = MirrorRule::no, .mesh = std::move(mesh), .clear_for = {}});
}

Relief relief_of(const Study& study)
{
    return find_relief(study, degrees(5), Workers{.threads = 1, .stop = {}, .progress = {}});
}

} // namespace glim::test
