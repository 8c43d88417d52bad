// The same answer by another way: another library, another frame, another cutting of the bodies.

#include "shapes/box_tree.h"
#include "shapes/rough_scene.h"
#include "shapes/small_study.h"
#include "units/trig.h"
#include "visibility/touch.h"
#include "visibility/visible_toward.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

const std::array<std::pair<double, double>, 5> some_directions = {
    {{-45, 0}, {-45, 15}, {0, 0}, {33, -10}, {80, 15}}};

TriangleMesh all_in_one(const std::vector<TriangleMesh>& meshes)
{
    TriangleMesh all;
    for (const TriangleMesh& mesh : meshes)
        all = joined(all, mesh);
    return all;
}

} // namespace

// CGAL 5.5's AABB tree: a general-purpose geometry library in double, with a box tree and a
// triangle test of its own.
TEST_CASE("an independent box tree in double answers the same rays alike", "[visibility]")
{
    const std::vector<TriangleMesh> bodies = clutter(7, 60);
    const BoxTree tree(bodies);
    const Caster caster = Caster::flat(bodies);

    std::vector<RayStart> starts;
    const LitLattice lattice(wrapped_lens(), millimetres(2));
    for (const Point& p : lattice.vertices())
        starts.push_back({float(p.x()), float(p.y()), float(p.z()), 0.05F});
    std::size_t different = 0;
    std::size_t hidden = 0;
    for (const auto& [h, v] : some_directions) {
        const Direction toward = direction_of({degrees(h), degrees(v)}, LampFrame{});
        const auto answers = caster.occluded(toward, starts);
        for (std::size_t i = 0; i < starts.size(); ++i) {
            const Point at(starts[i].x, starts[i].y, starts[i].z);
            different += tree.blocks(at + 0.05 * toward.vector(), toward) != (answers[i] == 1);
            hidden += answers[i];
        }
    }
    CHECK(hidden > 500);
    // Rays that pass an edge within a float's grain (1e-5 mm) may be called either way.
    CHECK(different <= 1);
}

TEST_CASE("what is visible alone is the same to the last bit as with what hides it", "[visibility]")
{
    const Watched lamp(lamp_behind(wrapped_lens(), clutter(3, 40)));
    bool any_hidden = false;
    for (const auto& [h, v] : some_directions) {
        const Direction toward = direction_of({degrees(h), degrees(v)}, LampFrame{});
        const SeenArea whole = seen_toward(lamp.view(), toward);
        const SeenArea alone = visible_toward(lamp.view(), toward);
        CHECK(alone.lens == whole.lens);
        CHECK(alone.visible == whole.visible);
        CHECK(alone.low == whole.low);
        CHECK(alone.high == whole.high);
        CHECK(alone.expected_error == whole.expected_error);
        CHECK(alone.rim == whole.rim);
        CHECK(alone.outline == whole.outline);
        any_hidden = any_hidden || whole.rim > Length();
    }
    CHECK(any_hidden);
}

TEST_CASE("sampled bounds and estimate agree with the exact area before clutter", "[visibility]")
{
    for (int seed = 1; seed <= 8; ++seed) {
        const Watched lamp(lamp_behind(wrapped_lens(), clutter(seed, 40)));
        for (const auto& [h, v] : some_directions) {
            CAPTURE(seed, h, v);
            const SeenArea seen = lamp.sampled(h, v);
            const double exact = lamp.exact_mm2(h, v);
            // Bars here are 2 mm and wider, the pitch is 1 mm: nothing slips between corners but
            // tips; a tip is less than a cell.
            CHECK(exact >= in_mm2(seen.low) - 1);
            CHECK(exact <= in_mm2(seen.high) + 1);
            CHECK(in_mm2(seen.visible) ==
                  Approx(exact).margin(2 * in_mm2(seen.expected_error) + 1e-3));
        }
    }
}

TEST_CASE("parts under instances and one flat scene see the same", "[visibility]")
{
    Study study = lamp_behind(moved(wrapped_lens(), {0, 600, 0}), clutter(3, 40), MirrorRule::yes);
    PreparedScene scene(study);
    const LampStanding lamp{LampId{0}, false};
    const LampView instanced = scene.view_of(lamp, study.sampling);

    const Point origin = box_of(study.surfaces[SurfaceId{0}].mesh).centre();
    std::vector<TriangleMesh> flat;
    for (const Standing& s : scene.obstacles_of(lamp)) {
        const TriangleMesh& drawn = study.surfaces[s.surface].mesh;
        flat.push_back(
            moved(s.twin ? placed(drawn, study.vehicle.across_median()) : drawn, -origin));
    }
    LampView alike = scene.view_of(lamp, study.sampling);
    alike.all = Caster::flat(flat);
    for (const auto& [h, v] : some_directions) {
        const Direction toward = direction_of({degrees(h), degrees(v)}, LampFrame{});
        // A placement rounded to float moves a twin's edge by up to 6e-5 mm at 1 m.
        CHECK(in_mm2(seen_toward(instanced, toward).visible) ==
              Approx(in_mm2(seen_toward(alike, toward).visible)).margin(0.02));
    }
}

TEST_CASE("a scene turned by 25 degrees shows 25 degrees on what it showed before", "[visibility]")
{
    const std::vector<TriangleMesh> bodies = clutter(5, 40);
    std::vector<TriangleMesh> turned_bodies;
    for (const TriangleMesh& b : bodies)
        turned_bodies.push_back(turned(b, degrees(25)));
    const Watched before(lamp_behind(wrapped_lens(), bodies));
    const Watched after(lamp_behind(turned(wrapped_lens(), degrees(25)), turned_bodies));
    for (const auto& [h, v] : some_directions) {
        CHECK(after.exact_mm2(h + 25, v) == Approx(before.exact_mm2(h, v)).margin(1e-3));
        CHECK(in_mm2(after.sampled(h + 25, v).visible) ==
              Approx(in_mm2(before.sampled(h, v).visible)).margin(3));
    }
}

TEST_CASE("the mirrored lamp sees what the drawn one sees", "[visibility]")
{
    Study study = lamp_behind(moved(wrapped_lens(), {0, 600, 0}),
                              {moved(all_in_one(clutter(2, 40)), {0, 500, 0})}, MirrorRule::yes);
    study.surfaces[SurfaceId{0}].mirror = MirrorRule::yes;
    const PreparedScene scene(study);
    const LampView drawn = scene.view_of({LampId{0}, false}, study.sampling);
    const LampView twin = scene.view_of({LampId{0}, true}, study.sampling);
    const LampFrame left{Direction::x(), Direction::y(), Direction::z()};
    const LampFrame right{Direction::x(), -Direction::y(), Direction::z()};
    for (const auto& [h, v] : some_directions) {
        const Bearing b{degrees(h), degrees(v)};
        CHECK(in_mm2(seen_toward(twin, direction_of(b, right)).visible) ==
              Approx(in_mm2(seen_toward(drawn, direction_of(b, left)).visible))
                  .margin(in_mm2(seen_toward(drawn, direction_of(b, left)).expected_error)));
        CHECK(in_mm2(scene.exact_view_of({LampId{0}, true}, study.sampling.touch)
                         .toward(direction_of(b, right))
                         .visible) ==
              Approx(in_mm2(scene.exact_view_of({LampId{0}, false}, study.sampling.touch)
                                .toward(direction_of(b, left))
                                .visible))
                  .margin(1e-3));
    }
}

TEST_CASE("half a model shows its other half to the lamp", "[visibility]")
{
    // The lamp stands 600 left of the median. A flank 100 ahead stands only right of the median,
    // as the twin of a drawn one; seen at 81 inboard it hides the lamp, undrawn it could not.
    const double far = std::atan2(700, 100) / std::acos(-1) * 180;
    const TriangleMesh flank = wall(100, 50, 150, -50, 50);
    const auto lens = [] { return moved(plate(Point::Zero(), 60, 40), {0, 600, 0}); };
    const Watched half(lamp_behind(lens(), {flank}, MirrorRule::yes));
    const Watched once(lamp_behind(lens(), {flank}, MirrorRule::no));
    CHECK(half.exact_mm2(-far, 0) == Approx(0).margin(1e-3));
    CHECK(once.exact_mm2(-far, 0) == Approx(2400 * cos(degrees(far))).margin(1e-3));
}

TEST_CASE("a part cut into four hides what the whole part hides", "[visibility]")
{
    const TriangleMesh whole = all_in_one(clutter(11, 40));
    std::vector<TriangleMesh> quarters;
    for (std::uint32_t q = 0; q < 4; ++q) {
        std::vector<std::uint32_t> facets;
        for (std::uint32_t f = q; f < whole.facets.size(); f += 4)
            facets.push_back(f);
        quarters.push_back(part_of(whole, facets));
    }
    const Watched one(lamp_behind(wrapped_lens(), {whole}));
    const Watched four(lamp_behind(wrapped_lens(), quarters));
    for (const auto& [h, v] : some_directions) {
        CHECK(in_mm2(four.sampled(h, v).visible) == in_mm2(one.sampled(h, v).visible));
        CHECK(four.exact_mm2(h, v) == Approx(one.exact_mm2(h, v)).margin(1e-9));
    }
}

TEST_CASE("another obstacle never raises an area", "[visibility]")
{
    std::vector<TriangleMesh> bodies;
    std::array<double, 5> before;
    before.fill(1e9);
    for (const TriangleMesh& body : clutter(13, 20)) {
        bodies.push_back(body);
        const Watched lamp(lamp_behind(wrapped_lens(), bodies));
        for (std::size_t i = 0; i < some_directions.size(); ++i) {
            const double now = lamp.exact_mm2(some_directions[i].first, some_directions[i].second);
            CHECK(now <= before[i] + 1e-6);
            before[i] = now;
        }
    }
}

TEST_CASE("a scene 5 m away shows the same to a thousandth of a square millimetre", "[visibility]")
{
    const Vector away(4000, 2000, 2236);
    std::vector<TriangleMesh> far;
    for (const TriangleMesh& b : clutter(17, 40))
        far.push_back(moved(b, away));
    const Watched here(lamp_behind(wrapped_lens(), clutter(17, 40)));
    const Watched there(lamp_behind(moved(wrapped_lens(), away), far));
    for (const auto& [h, v] : some_directions) {
        CHECK(there.exact_mm2(h, v) == Approx(here.exact_mm2(h, v)).margin(1e-3));
        CHECK(
            in_mm2(there.sampled(h, v).visible) ==
            Approx(in_mm2(here.sampled(h, v).visible))
                .margin(in_mm2(here.sampled(h, v).expected_error))); // equal edges halve otherwise
    }
}

TEST_CASE("a surface that is clear for one lamp still blocks another", "[visibility]")
{
    Study study = lamp_behind(plate(Point::Zero(), 60, 40), {wall(10, -100, 100, -100, 100)});
    study.surfaces[SurfaceId{1}].clear_for = {LampId{0}};
    study.lamps.add(study.lamps[LampId{0}]);
    const PreparedScene scene(study);
    const Direction ahead = Direction::x();
    CHECK(in_mm2(seen_toward(scene.view_of({LampId{0}, false}, study.sampling), ahead).visible) ==
          Approx(2400));
    CHECK(in_mm2(seen_toward(scene.view_of({LampId{1}, false}, study.sampling), ahead).visible) ==
          Approx(0).margin(1e-9));
}

TEST_CASE("what came with the lamp at its approval hides, but counts in the approved area",
          "[visibility]")
{
    // A hood over the upper half, approved; a bar over a quarter, not.
    Study study = lamp_behind(plate(Point::Zero(), 60, 40),
                              {wall(10, -100, 100, 0, 100), wall(20, 15, 100, -100, 100)});
    study.lamps[LampId{0}].approved_with = {SurfaceId{1}};
    const Watched lamp(study);
    const SeenArea seen = lamp.sampled(0, 0);
    CHECK(in_mm2(seen.lens) == Approx(2400));
    CHECK(in_mm2(seen.approved) == Approx(1200).margin(2));
    CHECK(in_mm2(seen.visible) == Approx(900).margin(2));
}

TEST_CASE("slivers and dense facets are cut to the pitch and share their corners", "[visibility]")
{
    const LitLattice sliver(plate(Point::Zero(), 130, 0.5), millimetres(1));
    double area = 0;
    CHECK(sliver.cells().size() < 600); // two facets of 130 rows
    for (const LitLattice::Cell& cell : sliver.cells()) {
        area += cell.area_mm2;
        for (int i = 0; i < 3; ++i)
            CHECK(
                (sliver.vertices()[cell.corners[i]] - sliver.vertices()[cell.corners[(i + 1) % 3]])
                    .norm() <= 1.42); // a row and a step along it
    }
    CHECK(area == Approx(65));
    // A disc's cells make one sheet: Euler's formula, vertices - edges + cells = 1.
    const LitLattice sheet(disc(30, 40), millimetres(2));
    CHECK(int(sheet.vertices().size()) - int(sheet.edges().size()) + int(sheet.cells().size()) ==
          1);
}

TEST_CASE("any number of threads gives the same areas", "[visibility]")
{
    const Watched lamp(lamp_behind(wrapped_lens(), clutter(19, 40)));
    std::vector<Direction> directions;
    for (int h = -45; h <= 80; h += 5)
        directions.push_back(lamp.toward(h, 3));
    const auto one =
        sweep(lamp.view(), directions, Workers{.threads = 1, .stop = {}, .progress = {}});
    const auto four =
        sweep(lamp.view(), directions, Workers{.threads = 4, .stop = {}, .progress = {}});
    for (std::size_t i = 0; i < directions.size(); ++i) {
        CHECK(in_mm2(one[i].visible) == in_mm2(four[i].visible));
        CHECK(in_mm2(one[i].low) == in_mm2(four[i].low));
        CHECK(in_mm2(one[i].expected_error) == in_mm2(four[i].expected_error));
    }
}
