#include "visibility/near_look.h"

#include "shapes/random_numbers.h"
#include "shapes/rough_scene.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "visibility/visible_toward.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;
using namespace glim::shapes;

namespace {

constexpr LampId lamp_id{0};

Direction toward(double h_deg, double v_deg)
{
    return direction_of({degrees(h_deg), degrees(v_deg)}, {});
}

/// How far the bodies of a scene may go.
struct Freedom {
    Length reach;
    Angle turn = degrees(0); ///< of the lit face
};

/// The study's first lamp looked at as drawn, and its bodies moved afterwards: every one of them
/// for itself, the lens included.
class MovedScene {
public:
    MovedScene(Study study, Length pitch)
        : study_(std::make_unique<Study>(std::move(study))), scene_(*study_), pitch_(pitch),
          fine_(scene_.view_of({lamp_id}, {.feature = millimetres(1)})),
          coarse_(scene_.view_of({lamp_id}, {.feature = pitch})), places_(study_->surfaces.size())
    {
    }

    /// Puts all bodies back first to where they were drawn.
    NearLook look(const Direction& toward, const Freedom& freedom)
    {
        for (const SurfaceId s : surfaces())
            place(s, Placement());
        std::vector<Flock> flocks;
        for (const Standing& s : scene_.obstacles_of({lamp_id})) {
            const Box box = box_of(study_->surfaces[s.surface].mesh);
            const bool is_lens = s.surface == lens;
            flocks.push_back({{{box.least - scene_.origin(), box.most - scene_.origin()}},
                              scene_.caster_of({s}),
                              is_lens ? Length() : freedom.reach,
                              is_lens});
        }
        return NearLook({fine_, coarse_, flocks, freedom.turn}, toward);
    }
    void place(SurfaceId surface, const Placement& placement)
    {
        scene_.place(surface, placement);
        places_[surface] = placement;
    }
    StrayedBodies strayed() const
    {
        StrayedBodies bodies;
        bodies.lit = Straying(scene_.in_scene({lens, false}, places_[lens]));
        bodies.lit_from_scene = bodies.lit.moved.inverse();
        for (const Standing& s : scene_.obstacles_of({lamp_id})) {
            const Placement moved = scene_.in_scene(s, places_[s.surface]);
            StrayedFlock& flock = bodies.flocks.emplace_back();
            flock.bodies.push_back({scene_.part_of(s.surface),
                                    (bodies.lit_from_scene * moved).inverse(), Straying(moved)});
        }
        return bodies;
    }
    /// The plain way, with the same lattice.
    Area plain(const Direction& toward) const
    {
        return visible_toward(scene_.view_of({lamp_id}, {.feature = pitch_}), toward).visible;
    }
    std::vector<SurfaceId> surfaces() const { return study_->surfaces.ids(); }

    static constexpr SurfaceId lens{0};

private:
    std::unique_ptr<Study> study_;
    PreparedScene scene_;
    Length pitch_;
    LampView fine_, coarse_;
    Slots<SurfaceId, Placement> places_;
};

} // namespace

TEST_CASE("a look near what was drawn sees what a plain look sees there", "[visibility]")
{
    // Rims within a nanometre of a corner may fall either way, and bisections differ in depth.
    constexpr double tolerance_mm2 = 4;
    MovedScene scene(lamp_behind(dome(40, 24),
                                 {wall(60, 5, 300, -300, 300), box({50, -60, -90}, {70, 60, -30})}),
                     millimetres(4));
    const SurfaceId edge{1}, block{2};
    for (const double h : {-30.0, 0.0, 20.0, 45.0})
        for (const double v : {-10.0, 0.0, 15.0}) {
            const Direction d = toward(h, v);
            const NearLook look = scene.look(d, {.reach = millimetres(3)});
            for (const double by : {-2.9, -1.0, 0.0, 0.4, 2.9}) {
                scene.place(edge, Placement::shift({0, by, 0}));
                scene.place(block, Placement::shift({0, 0, -by}));
                INFO("H " << h << ", V " << v << ", moved " << by);
                CHECK(in_mm2(look.visible(scene.strayed())) ==
                      Approx(in_mm2(scene.plain(d))).margin(tolerance_mm2));
            }
        }
}

TEST_CASE("bodies and lens that move and turn each its own way are seen as a plain look sees them",
          "[visibility]")
{
    // The same corners of the same lattice: what is left are rims along some hundred edges, each
    // found to 3/32 of 3 mm by the one and to less by the other.
    constexpr double tolerance_mm2 = 3;
    constexpr double most_turn_deg = 0.3, most_shift_mm = 1.5;
    for (int seed = 1; seed <= 6; ++seed) {
        MovedScene scene(lamp_behind(wrapped_lens(), clutter(seed, 8)), millimetres(3));
        RandomNumbers random(static_cast<std::uint64_t>(seed));
        for (const double h : {-20.0, 10.0, 50.0}) {
            const Direction d = toward(h, random.real(-10, 10));
            // A turn about a point within 600 mm of all bodies moves them by 3.2 mm at most.
            const NearLook look =
                scene.look(d, {.reach = millimetres(8), .turn = degrees(2 * most_turn_deg)});
            for (int build = 0; build < 4; ++build) {
                const bool turns = build % 2 == 1;
                for (const SurfaceId s : scene.surfaces())
                    scene.place(s, Placement::shift(random.vector(0, most_shift_mm)) *
                                       Placement::turn(random.vector(0, 200), random.direction(),
                                                       degrees(turns ? most_turn_deg : 0)));
                INFO("seed " << seed << ", H " << h << ", build " << build);
                const StrayedBodies strayed = scene.strayed();
                CHECK(in_mm2(look.visible(strayed, RimSearch::close)) ==
                      Approx(in_mm2(scene.plain(d))).margin(tolerance_mm2));
                CHECK(look.surely_visible(strayed) <= look.visible(strayed));
            }
        }
    }
}

TEST_CASE("what comes in from beside the lit face is seen", "[visibility]")
{
    // A wall that ends 1 mm beside the lit face as drawn, and 2 mm before it when moved.
    MovedScene scene(lamp_behind(plate(Point::Zero(), 60, 40), {wall(40, 31, 300, -300, 300)}),
                     millimetres(6));
    const NearLook look = scene.look(toward(0, 0), {.reach = millimetres(3)});
    CHECK(in_mm2(look.visible(scene.strayed())) == Approx(2400));
    scene.place(SurfaceId{1}, Placement::shift({0, -3, 0}));
    // Closed form: 2 mm of 60 are hidden over a height of 40; rims are found to 0.2 mm an edge.
    CHECK(in_mm2(look.visible(scene.strayed())) == Approx(2320).margin(4));
}

TEST_CASE("what stands behind the lit face and comes before it is seen", "[visibility]")
{
    MovedScene scene(lamp_behind(plate(Point::Zero(), 60, 40), {wall(-1, 0, 300, -300, 300)}),
                     millimetres(3));
    const NearLook look = scene.look(toward(0, 0), {.reach = millimetres(3)});
    CHECK(in_mm2(look.visible(scene.strayed())) == Approx(2400));
    scene.place(SurfaceId{1}, Placement::shift({2, 0, 0}));
    CHECK(in_mm2(look.visible(scene.strayed(), RimSearch::close)) == Approx(1200).margin(1));
}

TEST_CASE("what is surely visible lies beyond the reach of any rim", "[visibility]")
{
    MovedScene scene(lamp_behind(plate(Point::Zero(), 200, 90), {wall(40, 0, 300, -300, 300)}),
                     millimetres(3));
    const NearLook look = scene.look(toward(0, 0), {.reach = millimetres(8)});
    const auto surely_seen_after = [&](double by) {
        scene.place(SurfaceId{1}, Placement::shift({0, by, 0}));
        return in_mm2(look.surely_visible(scene.strayed()));
    };
    // Closed form: 90 mm high, from y = -100 to where the rim may go, to two cells.
    for (const double by : {-7.0, -2.0, 2.0}) {
        const double at_most = 90 * (100 - std::abs(by));
        CHECK(surely_seen_after(by) <= at_most);
        CHECK(surely_seen_after(by) >= at_most - 90 * 2 * 3);
    }
}

TEST_CASE("only corners that a rim may pass over are asked", "[visibility]")
{
    MovedScene scene(lamp_behind(plate(Point::Zero(), 200, 90), {wall(40, 0, 300, -300, 300)}),
                     millimetres(3));
    const NearLook look = scene.look(toward(0, 0), {.reach = millimetres(8)});
    const auto asked_after = [&](const Vector& by) {
        scene.place(SurfaceId{1}, Placement::shift(by));
        return look.corners(scene.strayed());
    };
    // Rows of some 31 corners, 3 mm apart, along the rim.
    CHECK(asked_after({0, 0, 0}) == 0);
    CHECK(asked_after({8, 0, 0}) < 3 * 31); // along the line of sight
    CHECK(asked_after({0, 0, 8}) < 4 * 31); // along the rim
    CHECK(asked_after({0, 1, 0}) < 4 * 31);
    CHECK(asked_after({0, 7, 0}) > 2 * 31);
    CHECK(asked_after({0, 7, 0}) < 6 * 31); // not on both sides
}

TEST_CASE("a rim in the shadow of something else is not lost", "[visibility]")
{
    // Two walls; the nearer one hides all that the farther one does and 1 mm more, until it moves.
    MovedScene scene(lamp_behind(plate(Point::Zero(), 60, 40),
                                 {wall(40, 0, 300, -300, 300), wall(60, 1, 300, -300, 300)}),
                     millimetres(6));
    const NearLook look = scene.look(toward(0, 0), {.reach = millimetres(5)});
    const auto seen_after = [&](double near_by, double far_by) {
        scene.place(SurfaceId{1}, Placement::shift({0, near_by, 0}));
        scene.place(SurfaceId{2}, Placement::shift({0, far_by, 0}));
        return in_mm2(look.visible(scene.strayed(), RimSearch::close));
    };
    // Closed form: 40 mm high, in view up to the inner edge.
    for (const double near_by : {-4.0, -0.5, 0.0, 2.0, 4.5})
        for (const double far_by : {-4.5, -1.5, 0.0, 3.0}) {
            INFO("moved by " << near_by << " and " << far_by);
            CHECK(seen_after(near_by, far_by) ==
                  Approx(40 * (30 + std::min(near_by, 1 + far_by))).margin(1));
        }
}
