#include "judgement/obstructed_light.h"

#include "judgement/made_rules.h"
#include "shapes/made_light.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

Study behind_knife_edge()
{
    Study study = lit_behind_knife_edge(lambert(3));
    study.sampling.step = degrees(15);
    return asking(std::move(study), "light",
                  {made_row("light", LeastIntensity{candelas(0.3)}, 0, 45, 0, 0)});
}

ObstructedLight left_of(const Study& study, Angle step)
{
    const Session session(study);
    const Findings found = session.check(session.all_checks(), study.sampling.step, {});
    const auto light = obstructed_light(session, found.looks.front(), step, {});
    REQUIRE(light.has_value());
    return *light;
}

} // namespace

TEST_CASE("the obstructed distribution has the file's light where nothing is hidden, and its share "
          "elsewhere",
          "[judgement]")
{
    const ObstructedLight light = left_of(behind_knife_edge(), degrees(15));
    const IntensityGrid& grid = light.grid;
    CHECK(grid.goniometer == Goniometer::a);
    CHECK(grid.horizontal.size() == 13);
    CHECK(grid.vertical.size() == 13);
    CHECK(light.files == std::vector<std::string>{"made.ies"});
    for (std::size_t h = 0; h < grid.horizontal.size(); ++h) {
        // On the left lamp outboard is to the left, where type a counts H negative.
        const Angle outboard = -grid.horizontal[h];
        if (outboard >= degrees(90) || outboard <= degrees(-90))
            continue;
        const double tangent = sin(outboard) / cos(outboard);
        const double share = std::clamp((80 - 40 * tangent) / 60, 0.0, 1.0);
        INFO(in_degrees(outboard));
        CHECK(in_candelas(grid.at(h, 6)) == Approx(3 * cos(outboard) * share).epsilon(2e-3));
    }
}

TEST_CASE("the obstructed distribution reaches no farther than the file", "[judgement]")
{
    Study study = behind_knife_edge();
    study.lights = {made_light_within(45, lambert(3))};
    const ObstructedLight light = left_of(study, degrees(10));
    CHECK(light.grid.horizontal.front() == degrees(-40));
    CHECK(light.grid.horizontal.back() == degrees(40));
    CHECK(light.grid.vertical.size() == 9);
}

TEST_CASE("a lamp without a photometric file has no distribution to write", "[judgement]")
{
    Study study = behind_knife_edge();
    study.lights.clear();
    const Session session(study);
    const Findings found = session.check(session.all_checks(), degrees(15), {});
    CHECK(!obstructed_light(session, found.looks.front(), degrees(15), {}));
}
