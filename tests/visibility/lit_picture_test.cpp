#include "visibility/lit_picture.h"

#include "machine/stop.h"
#include "shapes/rough_scene.h"
#include "shapes/small_study.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

/// The study's first lamp and what pictures of it need.
struct Pictured {
    explicit Pictured(Study s, Obstacles obstacles = Obstacles::all)
        : study(std::make_unique<Study>(std::move(s))),
          scene(*study), lamp{LampId{0}, false, obstacles},
          view(scene.view_of(lamp, study->sampling))
    {
    }

    LitPicture from(double h_deg, double v_deg, const Workers& workers = {}) const
    {
        PictureFrame frame = picture_frame(toward(h_deg, v_deg), Direction::z(), Direction::x());
        frame.pixel = millimetres(0.15);
        frame.width = 800;
        frame.height = 500;
        // Off the middle, so that no row of samples runs along an edge.
        frame.centre = box_of(scene.lit_surface_of(lamp)).centre() + Vector(0.011, 0.023, 0.017);
        return lit_picture(scene, lamp, view, frame, workers);
    }

    static Direction toward(double h_deg, double v_deg)
    {
        return direction_of({degrees(h_deg), degrees(v_deg)},
                            {Direction::x(), Direction::y(), Direction::z()});
    }

    std::unique_ptr<Study> study; ///< where it is must not change: the scene points to it
    PreparedScene scene;
    LampStanding lamp;
    LampView view;
};

double mm2(const LitPicture& picture, LitKind kind) { return in_mm2(picture.area_of(kind)); }

} // namespace

TEST_CASE("the pixels of a plate make its projected area", "[visibility]")
{
    const Pictured lamp(lamp_alone(plate(Point::Zero(), 60, 40)));
    for (const double h : {0.0, 30.0, -60.0}) {
        const LitPicture picture = lamp.from(h, 10);
        const double expected = 2400 * cos(degrees(h)) * cos(degrees(10));
        CHECK(mm2(picture, LitKind::seen) == Approx(expected).epsilon(0.005));
        CHECK(mm2(picture, LitKind::hidden_by_others) == 0);
        CHECK(mm2(picture, LitKind::hidden_by_approved) == 0);
    }
}

TEST_CASE("the pixels behind a knife edge make the area on paper", "[visibility]")
{
    const Pictured lamp(lamp_behind(plate(Point::Zero(), 60, 40), {wall(40, 50, 500, -300, 300)}));
    const LitPicture picture = lamp.from(40, 0);
    // 2400 cos 40 f(40), f(40) = (50 - 40 tan 40 + 30) / 60
    CHECK(mm2(picture, LitKind::seen) == Approx(1422.882).epsilon(0.005));
    CHECK(mm2(picture, LitKind::hidden_by_others) ==
          Approx(2400 * cos(degrees(40)) - 1422.882).epsilon(0.005));
}

TEST_CASE("pixels divide the lit face as the areas do, among clutter and from all sides",
          "[visibility]")
{
    std::vector<TriangleMesh> bodies = clutter(5, 300);
    bodies.push_back(wall(15, -20, 5, -200, 200)); // approved with the lamp
    Study study = lamp_behind(wrapped_lens(), bodies);
    study.lamps[LampId{0}].approved_with = {SurfaceId{301}};
    const Pictured lamp(study);
    for (const double h : {-70.0, -45.0, 0.0, 33.0}) {
        CAPTURE(h);
        const LitPicture picture = lamp.from(h, 5);
        const SeenArea seen = seen_toward(lamp.view, Pictured::toward(h, 5));
        const double visible = in_mm2(seen.visible);
        REQUIRE(visible > 100);
        CHECK(mm2(picture, LitKind::seen) == Approx(visible).epsilon(0.005));
        CHECK(mm2(picture, LitKind::seen) + mm2(picture, LitKind::hidden_by_others) ==
              Approx(in_mm2(seen.approved)).epsilon(0.005));
        CHECK(mm2(picture, LitKind::seen) + mm2(picture, LitKind::hidden_by_others) +
                  mm2(picture, LitKind::hidden_by_approved) ==
              Approx(in_mm2(seen.lens)).epsilon(0.005));
    }
}

TEST_CASE("pixels make the exact area of a lamp that hides itself with its back", "[visibility]")
{
    // A lit dome, and ahead of a part of it a lit plate that shines the other way.
    const TriangleMesh back = turned_over(moved(plate(Point::Zero(), 15, 60, 3), {30, 20, 0}));
    const Pictured lamp(lamp_alone(joined(dome(20, 48), back)));
    const ExactView exact = lamp.scene.exact_view_of(lamp.lamp, lamp.view.touch);
    const Direction toward = Pictured::toward(35, 8);
    const LitPicture picture = lamp.from(35, 8);
    const double visible = in_mm2(exact.toward(toward).visible);
    CHECK(mm2(picture, LitKind::seen) == Approx(visible).epsilon(0.005));
    CHECK(mm2(picture, LitKind::hidden_by_approved) > 50);
    CHECK(mm2(picture, LitKind::hidden_by_approved) ==
          Approx(in_mm2(seen_toward(lamp.view, toward).lens) - visible).epsilon(0.005));
    CHECK(mm2(picture, LitKind::hidden_by_others) == 0);
}

TEST_CASE("a lamp that is turned away shows no pixel", "[visibility]")
{
    const Pictured lamp(lamp_alone(plate(Point::Zero(), 60, 40)));
    const LitPicture picture = lamp.from(180, 0);
    CHECK(picture.samples == std::vector(picture.samples.size(), LitKind::none));
}

TEST_CASE("a lit picture is the same for any number of threads, and can be stopped", "[visibility]")
{
    const Pictured lamp(lamp_behind(wrapped_lens(), clutter(5, 100)));
    const LitPicture one = lamp.from(20, 0, {.threads = 1, .stop = {}, .progress = {}});
    const LitPicture five = lamp.from(20, 0, {.threads = 5, .stop = {}, .progress = {}});
    CHECK(one.samples == five.samples);
    std::stop_source stop;
    stop.request_stop();
    CHECK_THROWS_AS(lamp.from(20, 0, {.threads = 2, .stop = stop.get_token(), .progress = {}}),
                    Stopped);
}
