#include "remedy/surface_change.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

/// A wall across x of 100 x 100 mm, n x n squares; those in its middle half stand `depth` back.
TriangleMesh wall(int n, double depth)
{
    TriangleMesh mesh;
    for (int j = 0; j <= n; ++j)
        for (int i = 0; i <= n; ++i) {
            const bool inner = 4 * i > n && 4 * i < 3 * n && 4 * j > n && 4 * j < 3 * n;
            mesh.points.emplace_back(inner ? depth : 0, 100.0 * i / n, 100.0 * j / n);
        }
    const auto at = [&](int i, int j) { return static_cast<std::uint32_t>(j * (n + 1) + i); };
    for (int j = 0; j < n; ++j)
        for (int i = 0; i < n; ++i) {
            mesh.facets.push_back({at(i, j), at(i + 1, j), at(i + 1, j + 1)});
            mesh.facets.push_back({at(i, j), at(i + 1, j + 1), at(i, j + 1)});
        }
    return mesh;
}

Surface surface(const std::string& name, TriangleMesh mesh = {})
{
    Surface made;
    made.name = name;
    made.mesh = std::move(mesh);
    return made;
}

Study study_with(std::vector<Surface> surfaces)
{
    Study study;
    for (Surface& surface : surfaces)
        study.surfaces.add(std::move(surface));
    return study;
}

} // namespace

TEST_CASE("a wall pushed back has changed by the push, over the pushed part", "[remedy]")
{
    // In an 8 x 8 wall the inner 3 x 3 corners go back: a frustum over 4 x 4 squares whose floor is
    // 2 x 2 squares; its slanted rim reaches 12.5 mm.
    const std::vector<SurfaceChange> changes = surface_changes(
        study_with({surface("wall", wall(8, 0))}), study_with({surface("wall", wall(8, 3))}));
    REQUIRE(changes.size() == 1);
    CHECK(in_mm(changes[0].deepest) == Approx(3));
    CHECK(changes[0].where.x() == Approx(3));
    // At two corners of the rim a facet has no pushed corner: it is where it was. What is slanted
    // is larger than its outline.
    const double moved = 50 * 50 - 12.5 * 12.5;
    CHECK(in_mm2(changes[0].area) > moved);
    CHECK(in_mm2(changes[0].area) < 1.05 * moved);
    // A frustum: depth / 3 x (outer + inner + sqrt(outer x inner)), but its corners are cut off by
    // the way the rim's squares are divided.
    const double frustum = 3.0 / 3 * (50 * 50 + 25 * 25 + 50 * 25);
    CHECK(changes[0].volume == Approx(frustum).epsilon(0.06));
}

TEST_CASE("the same shape cut into other facets has not changed", "[remedy]")
{
    CHECK(surface_changes(study_with({surface("wall", wall(8, 0))}),
                          study_with({surface("wall", wall(5, 0))}))
              .empty());
}

TEST_CASE("what is cut away counts as deep as it reached", "[remedy]")
{
    TriangleMesh half = wall(8, 0);
    half.facets.resize(half.facets.size() / 2);
    const std::vector<SurfaceChange> changes = surface_changes(
        study_with({surface("wall", wall(8, 0))}), study_with({surface("wall", half)}));
    REQUIRE(changes.size() == 1);
    CHECK(in_mm(changes[0].deepest) == Approx(50));
    CHECK(changes[0].area == Area());
}

TEST_CASE("surfaces and lamps are told as added by their names", "[remedy]")
{
    Surface part = surface("part");
    part.lit_part_of = SurfaceId{0};
    const Study before = study_with({surface("nose")});
    Study after = study_with({surface("lens"), surface("nose"), part});
    Lamp side_lamp;
    side_lamp.name = "side lamp";
    after.lamps.add(side_lamp);
    CHECK(surfaces_added(before, after) == std::vector<std::string>{"lens"});
    CHECK(lamps_added(before, after) == std::vector<std::string>{"side lamp"});
    CHECK(lamps_added(after, before).empty());
}
