#include "shapes/exact_definition.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

const LampStanding drawn{LampId{0}, false};

Area ahead(const Study& study) { return ExactDefinition(study, drawn).visible(Direction::x()); }

TriangleMesh lens() { return plate(Point::Zero(), 60, 40); }

} // namespace

TEST_CASE("the definition sees a bare plate, and half of it behind a wall", "[proof]")
{
    CHECK(in_mm2(ahead(lamp_alone(lens()))) == Approx(2400).margin(1e-9));
    CHECK(in_mm2(ahead(lamp_behind(lens(), {wall(10, 0, 100, -100, 100)}))) ==
          Approx(1200).margin(1e-9));
}

TEST_CASE("the definition counts a lit facet once that a file repeats", "[proof]")
{
    TriangleMesh twice = joined(lens(), turned_over(lens()));
    CHECK(in_mm2(ahead(lamp_alone(std::move(twice)))) == Approx(2400).margin(1e-9));
}

TEST_CASE("what lies within the touch distance hides nothing by definition", "[proof]")
{
    const auto over_half = [](double x) {
        return in_mm2(ahead(lamp_behind(lens(), {wall(x, 0, 100, -100, 100)})));
    };
    CHECK(over_half(-1) == Approx(2400).margin(1e-9));
    CHECK(over_half(0) == Approx(2400).margin(1e-9));
    CHECK(over_half(0.049) == Approx(2400).margin(1e-9));
    CHECK(over_half(0.051) == Approx(1200).margin(1e-9));
}

TEST_CASE("a plate that pierces the lamp hides by what lies before the skip", "[proof]")
{
    // Rises from the plane of the lamp at 45 degrees: from y = 0 at x = 0 to y = 10 at x = 10.
    const TriangleMesh slope{
        .points = {{-10, -10, -99}, {10, 10, -99}, {10, 10, 99}, {-10, -10, 99}},
        .facets = {{0, 1, 2}, {0, 2, 3}}};
    // Before the face by more than 0.05: y from 0.05 to 10, over the height of 40.
    CHECK(in_mm2(ahead(lamp_behind(lens(), {slope}))) == Approx(2400 - 40 * 9.95).margin(1e-9));
}

TEST_CASE("the approved area by definition knows the lamp and its approved parts only", "[proof]")
{
    Study study = lamp_behind(lens(), {wall(10, -100, 100, 0, 100), wall(20, 15, 100, -100, 100)});
    study.lamps[LampId{0}].approved_with = {SurfaceId{1}};
    const ExactDefinition definition(study, drawn);
    CHECK(in_mm2(definition.approved(Direction::x())) == Approx(1200).margin(1e-9));
    CHECK(in_mm2(definition.visible(Direction::x())) == Approx(900).margin(1e-9));
}
