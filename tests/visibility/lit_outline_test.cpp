#include "visibility/lit_outline.h"

#include "geometry/weld.h"
#include "shapes/simple_shapes.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

TEST_CASE("a plate's outline shrinks across, not along the axis it is turned about", "[visibility]")
{
    const TriangleMesh lit = welded(plate(Point::Zero(), 30, 20, 5));
    CHECK(in_mm(lit_outline(lit, Direction::x())) == Approx(100));
    const Direction aslant =
        Direction::along({cos(degrees(60)), sin(degrees(60)), 0}); // about the vertical
    CHECK(in_mm(lit_outline(lit, aslant)) == Approx(2 * (20 + 30 * 0.5)));
}

TEST_CASE("a closed body's outline is its silhouette", "[visibility]")
{
    const TriangleMesh lit = welded(box({0, 0, 0}, {10, 20, 30}));
    CHECK(in_mm(lit_outline(lit, Direction::along({1, 1e-3, 1e-3}))) ==
          Approx(2 * (20 + 30)).epsilon(0.005));
    // A cube along its diagonal shows a regular hexagon of sides a sqrt(2/3).
    CHECK(in_mm(lit_outline(welded(box({0, 0, 0}, {10, 10, 10})), Direction::along({1, 1, 1}))) ==
          Approx(6 * 10 * 0.816496580927726));
}

TEST_CASE("a face turned away has no outline", "[visibility]")
{
    CHECK(in_mm(lit_outline(plate(Point::Zero(), 30, 20), -Direction::x())) == 0);
}

TEST_CASE("separate lit faces have an outline each", "[visibility]")
{
    const TriangleMesh two = welded(joined(plate({0, -40, 0}, 30, 20), plate({0, 40, 0}, 30, 20)));
    CHECK(in_mm(lit_outline(two, Direction::x())) == Approx(200));
}
