#include "input/plausibility.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

/// A body from x = 0 (nose) to x = `length`, floor at z = `floor`, with a lamp at x = `lamp_at`.
Study body(double length, double floor, double lamp_at)
{
    Study study;
    study.surfaces.add({"body",
                        Role::opaque,
                        MirrorRule::no,
                        {{{0, 0, floor}, {length, 0, floor}, {0, -500, 900}}, {{0, 1, 2}}},
                        {}});
    study.surfaces.add(
        {"lens",
         Role::emitting,
         MirrorRule::no,
         {{{lamp_at, -600, 700}, {lamp_at, -500, 700}, {lamp_at, -600, 750}}, {{0, 2, 1}}},
         {}});
    study.grounds.push_back({"curb", {}});
    Lamp lamp;
    lamp.name = "indicator";
    lamp.emits = {SurfaceId{1}};
    study.lamps.add(lamp);
    return study;
}

std::vector<std::string> doubts(const Study& study)
{
    std::vector<std::string> said;
    for (const Warning& doubt : doubts_about(study, {}))
        said.push_back(doubt.what);
    return said;
}

using Words = std::vector<std::string>;

} // namespace

TEST_CASE("an ordinary vehicle raises no doubt", "[input]")
{
    CHECK(doubts(body(4200, 150, 300)).empty());
}

TEST_CASE("a body of odd length is asked about", "[input]")
{
    CHECK(doubts(body(41, 150, 4)) == Words{"the model is 41 mm long: is that so?"});
    CHECK(doubts(body(42000, 150, 30)) == Words{"the model is 42.0 m long: is that so?"});
}

TEST_CASE("a body below the ground is asked about", "[input]")
{
    CHECK(doubts(body(4200, -310, 300)) ==
          Words{"part of the model lies below the ground (curb), down to 310 mm: is that so?"});
}

TEST_CASE("a front lamp in the rear half is asked about where the whole vehicle is drawn",
          "[input]")
{
    CHECK(doubts(body(4200, 150, 4000)) ==
          Words{"lamp `indicator` is a front lamp, but lies in the rear half of the model: is that "
                "so?"});
    CHECK(doubts(body(1200, 150, 1100)).empty());
}

TEST_CASE("a surface drawn over the median plane that gets a twin is asked about", "[input]")
{
    Study study = body(4200, 150, 300);
    study.surfaces[SurfaceId{0}].mirror = MirrorRule::yes;
    CHECK(doubts(study).empty());
    study.surfaces[SurfaceId{0}].mesh.points[1].y() = 5; // the median plane is y = 0
    CHECK(doubts(study).empty());
    study.surfaces[SurfaceId{0}].mesh.points[1].y() = 120;
    CHECK(doubts(study) == Words{"surface `body` has a twin, but reaches 120 mm over the median "
                                 "plane: is it drawn whole?"});
    study.surfaces[SurfaceId{0}].mirror = MirrorRule::straddles;
    CHECK(doubts(study).empty());
}

TEST_CASE("a tilted reference axis is told", "[input]")
{
    Study study = body(4200, 150, 300);
    study.lamps[LampId{0}].axis = Direction::along({-1, 0, 0.05}); // 2.9 degrees
    CHECK(doubts(study).empty());
    study.lamps[LampId{0}].axis = Direction::along({-1, 0, -0.0875}); // 5.0 degrees
    REQUIRE(doubts(study).size() == 1);
    CHECK(doubts(study)[0].find("is tilted by 5 degrees against the ground") != std::string::npos);
}
