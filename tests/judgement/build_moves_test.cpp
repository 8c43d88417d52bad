#include "judgement/build_moves.h"

#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

constexpr SurfaceId lens{0}, wall_id{1};

/// The lens at the origin and a wall before it, on the left; the vehicle drives along +x.
Study study_with(std::vector<Tolerance> tolerances)
{
    Study study = lamp_behind(moved(plate(Point::Zero(), 60, 40), {0, 500, 0}),
                              {moved(wall(40, 0, 300, -300, 300), {0, 500, 0})});
    study.variation.tolerances = std::move(tolerances);
    return study;
}

Tolerance of(std::vector<SurfaceId> surfaces, ToleranceWay way, double figure, int level = 0)
{
    Tolerance t;
    t.surfaces = std::move(surfaces);
    t.by[static_cast<std::size_t>(way)] = figure;
    t.about = Point(0, 500, 0);
    t.level = level;
    return t;
}

Point moved_point(const Study& study, SurfaceId surface, const Point& p,
                  const std::vector<double>& deviations)
{
    const BuildMoves moves(study, build_factors(study.variation.tolerances));
    return moves.places(deviations).at[surface](p);
}

} // namespace

TEST_CASE("ways go where their names say", "[judgement]")
{
    const auto to = [](ToleranceWay way, const Point& p, double by) {
        return moved_point(study_with({of({lens}, way, 1)}), lens, p, {by});
    };
    const Point about(0, 500, 0);
    CHECK(to(ToleranceWay::forward, about, 2) == Point(2, 500, 0));
    CHECK(to(ToleranceWay::outboard, about, 2) == Point(0, 502, 0));
    CHECK(to(ToleranceWay::up, about, 2) == Point(0, 500, 2));
    // A quarter turn takes what lies 10 forward 10 outboard or up, what lies outboard up.
    CHECK((to(ToleranceWay::turn, {10, 500, 0}, 90) - Point(0, 510, 0)).norm() < 1e-9);
    CHECK((to(ToleranceWay::tilt, {10, 500, 0}, 90) - Point(0, 500, 10)).norm() < 1e-9);
    CHECK((to(ToleranceWay::roll, {0, 510, 0}, 90) - Point(0, 500, 10)).norm() < 1e-9);
}

TEST_CASE("a body's own tolerance comes before that of its module", "[judgement]")
{
    // First 10 forward, then the quarter turn of the module about its point: 10 outboard.
    const Study study = study_with(
        {of({lens, wall_id}, ToleranceWay::turn, 1, 1), of({lens}, ToleranceWay::forward, 1)});
    CHECK((moved_point(study, lens, {0, 500, 0}, {90, 10}) - Point(0, 510, 0)).norm() < 1e-9);
    CHECK((moved_point(study, wall_id, {10, 500, 0}, {90, 10}) - Point(0, 510, 0)).norm() < 1e-9);
}

TEST_CASE("what moves together has no reach, and shifts add up", "[judgement]")
{
    const Study study =
        study_with({of({lens, wall_id}, ToleranceWay::up, 5), of({lens}, ToleranceWay::up, 1),
                    of({wall_id}, ToleranceWay::forward, 2)});
    const BuildMoves moves(study, build_factors(study.variation.tolerances));
    CHECK(in_mm(moves.reach({wall_id}, {lens}, moves.extents_of(std::vector{4.0, 0.0, 0.0}))) ==
          Approx(0).margin(1e-12));
    CHECK(in_mm(moves.reach({wall_id}, {lens}, moves.extents_of(std::vector{4.0, 0.5, -1.5}))) ==
          Approx(2));
    // Mirror images move apart.
    CHECK(in_mm(moves.reach({wall_id, true}, {lens},
                            moves.extents_of(std::vector{4.0, 0.0, 0.0}))) == Approx(8));
}
