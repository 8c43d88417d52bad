#include "visibility/near_look.h"

#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "visibility/visible_toward.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

constexpr LampId lamp_id{0};

/// The study's first lamp looked at as drawn, and its obstacles moved afterwards.
class MovedScene {
public:
    MovedScene(Study study, Length pitch)
        : study_(std::make_unique<Study>(std::move(study))), scene_(*study_), pitch_(pitch),
          fine_(scene_.view_of({lamp_id}, {.feature = millimetres(1)})),
          coarse_(scene_.view_of({lamp_id}, {.feature = pitch}))
    {
    }

    NearLook look(const Direction& toward, const Nearby& nearby) const
    {
        return NearLook({fine_, coarse_, fine_.others}, toward, nearby);
    }
    /// The plain way, with the same lattice.
    Area plain(const Direction& toward) const
    {
        return visible_toward(scene_.view_of({lamp_id}, {.feature = pitch_}), toward).visible;
    }
    Caster obstacles() const { return scene_.caster_of(scene_.obstacles_of({lamp_id})); }
    PreparedScene& scene() { return scene_; }

private:
    std::unique_ptr<Study> study_;
    PreparedScene scene_;
    Length pitch_;
    LampView fine_, coarse_;
};

Direction toward(double h_deg, double v_deg)
{
    return direction_of({degrees(h_deg), degrees(v_deg)}, {});
}

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
            const NearLook look = scene.look(d, {.reach = millimetres(3), .turn = degrees(0)});
            for (const double by : {-2.9, -1.0, 0.0, 0.4, 2.9}) {
                scene.scene().place(edge, Placement::shift({0, by, 0}));
                scene.scene().place(block, Placement::shift({0, 0, -by}));
                INFO("H " << h << ", V " << v << ", moved " << by);
                CHECK(in_mm2(look.visible(d, scene.obstacles(), millimetres(std::abs(by)))) ==
                      Approx(in_mm2(scene.plain(d))).margin(tolerance_mm2));
            }
        }
}

TEST_CASE("what comes in from beside the lit face is seen", "[visibility]")
{
    // A wall that ends 1 mm beside the lit face as drawn, and 2 mm before it when moved.
    MovedScene scene(lamp_behind(plate(Point::Zero(), 60, 40), {wall(40, 31, 300, -300, 300)}),
                     millimetres(6));
    const NearLook look = scene.look(toward(0, 0), {.reach = millimetres(3), .turn = degrees(0)});
    CHECK(in_mm2(look.visible(toward(0, 0), scene.obstacles(), millimetres(3))) == Approx(2400));
    scene.scene().place(SurfaceId{1}, Placement::shift({0, -3, 0}));
    // Closed form: 2 mm of 60 are hidden over a height of 40; rims are found to 0.2 mm an edge.
    CHECK(in_mm2(look.visible(toward(0, 0), scene.obstacles(), millimetres(3))) ==
          Approx(2320).margin(4));
}

TEST_CASE("few corners are asked where little can change", "[visibility]")
{
    MovedScene scene(lamp_behind(plate(Point::Zero(), 200, 90), {wall(40, 0, 300, -300, 300)}),
                     millimetres(3));
    const NearLook look = scene.look(toward(0, 0), {.reach = millimetres(8), .turn = degrees(0)});
    CHECK(look.corners(millimetres(1)) < look.corners(millimetres(8)));
    CHECK(look.corners(millimetres(1)) < 1000); // of about 2200
}

TEST_CASE("a caster takes other places for its parts", "[visibility]")
{
    const auto part = std::make_shared<PreparedPart>(wall(40, 0, 300, -300, 300));
    Caster caster({{part, Placement()}});
    const std::vector<RayStart> starts = {{0, 10, 0, 0}};
    CHECK(caster.occluded(Direction::x(), starts)[0] == 1);
    caster.place({{part, Placement::shift({0, 20, 0})}});
    CHECK(caster.occluded(Direction::x(), starts)[0] == 0);
    caster.place({{std::make_shared<PreparedPart>(wall(40, -300, 300, -300, 300)), Placement()}});
    CHECK(caster.occluded(Direction::x(), starts)[0] == 1);
}
