#include "visibility/exact_area.h"

#include "machine/stop.h"
#include "shapes/rough_scene.h"
#include "shapes/small_study.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

TEST_CASE("what others hide is what they take of what the approved leave", "[visibility]")
{
    // A hood over the upper half, approved; a bar over the right third, not.
    Study study = lamp_behind(plate(Point::Zero(), 60, 40),
                              {wall(10, -100, 100, 0, 100), wall(20, 10, 100, -100, 100)});
    study.lamps[LampId{0}].approved_with = {SurfaceId{1}};
    const Watched lamp(study);
    const ExactHidden hidden = lamp.exact().hidden_toward(Direction::x());
    CHECK(in_mm2(hidden.hidden) == Approx(20 * 20));
    CHECK(in_mm2(hidden.rounding) > 0);
    CHECK(lamp.exact_mm2(0, 0) == Approx(40 * 20));
}

TEST_CASE("where only the approved hide, exactly nothing is hidden by others", "[visibility]")
{
    Study study = lamp_behind(wrapped_lens(), {wall(30, -100, 0, -100, 100)});
    study.lamps[LampId{0}].approved_with = {SurfaceId{1}};
    const Watched lamp(study);
    CHECK(lamp.exact_mm2(0, 0) < in_mm2(lamp.sampled(0, 0).lens) - 100);
    CHECK(in_mm2(lamp.exact().hidden_toward(Direction::x()).hidden) == 0);
    CHECK(in_mm2(lamp.exact().hidden_toward(Direction::x()).rounding) == 0);
}

TEST_CASE("several threads at one direction give the same exact areas", "[visibility]")
{
    const Watched lamp(lamp_behind(wrapped_lens(), clutter(19, 40)));
    const Workers four{.threads = 4, .stop = {}, .progress = {}};
    for (const double h : {-45.0, 0.0, 33.0, 80.0}) {
        const Direction toward = lamp.toward(h, 5);
        CHECK(lamp.exact().toward(toward).visible == lamp.exact().toward(toward, four).visible);
        CHECK(lamp.exact().hidden_toward(toward).hidden ==
              lamp.exact().hidden_toward(toward, four).hidden);
    }
}

TEST_CASE("exact areas stop when told to", "[visibility]")
{
    const Watched lamp(lamp_behind(wrapped_lens(), clutter(19, 40)));
    std::stop_source stop;
    stop.request_stop();
    CHECK_THROWS_AS(lamp.exact().toward(Direction::x(),
                                        {.threads = 2, .stop = stop.get_token(), .progress = {}}),
                    Stopped);
}
