#include "judgement/blocking_map.h"

#include "judgement/made_rules.h"
#include "machine/stop.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

/// Of the first lamp under the first row.
struct Mapped {
    Findings findings;
    BlockingMap map;

    const LampVerdict& verdict() const { return findings.checks[0].rows[0].lamps[0]; }
    const LampLook& look() const { return findings.looks[verdict().look]; }
    /// "" where nobody is in the way.
    std::string name_at(std::size_t direction) const
    {
        const auto& most = map.most[direction];
        return most ? map.surfaces[*most].name : "";
    }
};

Mapped mapped(Study study, unsigned threads = 2)
{
    const Session session(std::move(study));
    Mapped m{session.check(session.all_checks(), degrees(5), {}), {}};
    m.map = blocking_map(session, m.look(), m.verdict(),
                         {.threads = threads, .stop = {}, .progress = {}});
    return m;
}

/// A lens of 60 x 40 with a wall to each side, 40 ahead: outboard "obstacle 1" from y = 50 on,
/// inboard "obstacle 2" up to y = -50.
Study between_walls()
{
    Study study = lamp_behind(plate(Point::Zero(), 60, 40),
                              {wall(40, 50, 500, -300, 300), wall(40, -500, -50, -300, 300)});
    return asking(std::move(study), "row",
                  {made_row("row", LeastArea{square_millimetres(1250)}, -60, 60, -10, 10)});
}

} // namespace

TEST_CASE("each direction is given to the wall that stands in it", "[judgement]")
{
    const Mapped m = mapped(between_walls());
    REQUIRE(m.map.most.size() == m.verdict().directions.size());
    REQUIRE(m.map.surfaces.size() == 2);
    for (std::size_t i = 0; i < m.map.most.size(); ++i) {
        const Bearing& b = m.look().toward[m.verdict().directions[i].at];
        // A wall's edge is at y = 50 - 40 tan H on the lens, which ends at 30: from 26.6 degrees
        // on.
        CHECK(m.name_at(i) == (b.h > degrees(26.6)    ? "obstacle 1"
                               : b.h < degrees(-26.6) ? "obstacle 2"
                                                      : ""));
    }
}

TEST_CASE("the map's first surface takes most in most directions, and agrees with the blockers",
          "[judgement]")
{
    Study study = lamp_behind(plate(Point::Zero(), 60, 40),
                              {wall(60, 70, 500, -300, 300), wall(40, 30, 500, -300, 300)});
    const Mapped m =
        mapped(asking(std::move(study), "row",
                      {made_row("row", LeastArea{square_millimetres(1250)}, 0, 45, -10, 10)}));
    // At 45 degrees the nearer wall hides 40 of the lens's 60 mm, the other one 20.
    CHECK(m.map.surfaces.front().name == "obstacle 2");
    CHECK(m.name_at(m.verdict().worst) == m.verdict().blockers.front().surface);
}

TEST_CASE("a sliver that few rays miss is found with many", "[judgement]")
{
    // A post 0.4 mm wide before the middle of the lens hides 16 mm2 of it straight ahead; 600
    // corners stand 2 mm apart.
    Study study = lamp_behind(plate(Point::Zero(), 60, 40), {wall(40, 0.8, 1.2, -300, 300)});
    study.sampling.feature = millimetres(0.3);
    const Mapped m =
        mapped(asking(std::move(study), "row",
                      {made_row("row", LeastArea{square_millimetres(1250)}, 0, 0, 0, 0)}));
    CHECK(m.name_at(0) == "obstacle 1");
}

TEST_CASE("the map is the same for any number of threads", "[judgement]")
{
    const Mapped one = mapped(between_walls(), 1), many = mapped(between_walls(), 3);
    CHECK(one.map.most == many.map.most);
}

TEST_CASE("a map that is stopped gives nothing", "[judgement]")
{
    const Session session(between_walls());
    const Findings f = session.check(session.all_checks(), degrees(5), {});
    std::stop_source source;
    source.request_stop();
    CHECK_THROWS_AS(blocking_map(session, f.looks[0], f.checks[0].rows[0].lamps[0],
                                 {.threads = 1, .stop = source.get_token(), .progress = {}}),
                    Stopped);
}
