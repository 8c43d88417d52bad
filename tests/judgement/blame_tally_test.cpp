#include "judgement/blame_tally.h"

#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

constexpr Area mm2 = square_millimetres(1);

} // namespace

TEST_CASE("means are over the failing directions, the worst one counts by itself", "[judgement]")
{
    const Study study = lamp_behind(plate(Point::Zero(), 60, 40), {wall(10, 0, 20, 0, 30)});
    const PreparedScene scene(study);
    const Standing wall_standing{SurfaceId{1}, false};
    const auto takes = [&](double alone, double jointly) {
        return std::vector<SurfaceTaken>{{wall_standing,
                                          {alone * mm2, jointly * mm2},
                                          {{0, true, alone * mm2},
                                           {0, false, jointly * mm2 / 2},
                                           {1, false, jointly * mm2 / 2}}}};
    };
    BlameTally tally;
    tally.add({.worst = false, .fails = true}, takes(10, 2));
    tally.add({.worst = true, .fails = false}, takes(100, 50));
    tally.add({.worst = false, .fails = true}, takes(20, 6));
    const std::vector<Blocker> blockers = tally.blockers(study, scene);
    REQUIRE(blockers.size() == 1);
    const Blocker& b = blockers[0];
    CHECK(b.surface == "obstacle 1");
    CHECK(b.alone_at_worst == 100 * mm2);
    CHECK(b.jointly_at_worst == 50 * mm2);
    CHECK(*b.mean_alone == 15 * mm2);
    CHECK(*b.mean_jointly == 4 * mm2);
    REQUIRE(b.facets.size() == 2);
    CHECK(b.facets[0].facet == 0);
    CHECK(b.facets[0].mean->taken == 17 * mm2);
    CHECK(b.facets[0].mean->first == 15 * mm2);
    CHECK(b.facets[0].at_worst.taken == 125 * mm2);
    CHECK(b.facets[1].mean->taken == 2 * mm2);
    CHECK(b.facets[1].mean->first == 0 * mm2);
    CHECK((b.facets[0].centre + b.facets[1].centre - Point(20, 20, 30)).norm() < 1e-9);
}

TEST_CASE("a surface that takes next to nothing is no blocker", "[judgement]")
{
    const Study study = lamp_behind(plate(Point::Zero(), 60, 40), {wall(10, 0, 20, 0, 30)});
    const PreparedScene scene(study);
    BlameTally tally;
    tally.add({.worst = true, .fails = true}, {{{SurfaceId{1}, false}, {0.001 * mm2, {}}, {}}});
    CHECK(tally.blockers(study, scene).empty());
}
