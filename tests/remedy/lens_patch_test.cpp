#include "remedy/lens_patch.h"

#include "shapes/simple_shapes.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

const LensShape round_lens{};
const LensShape oblong{.width_to_height = 2};

LensSeat middle_seat(const LensCarrier& carrier)
{
    std::uint32_t nearest = 0;
    double least = 1e9;
    for (std::uint32_t f = 0; f < carrier.mesh().facets.size(); ++f) {
        const Point c = (carrier.mesh().corner(f, 0) + carrier.mesh().corner(f, 1) +
                         carrier.mesh().corner(f, 2)) /
                        3;
        if (c.norm() < least) {
            least = c.norm();
            nearest = f;
        }
    }
    return carrier.seat(nearest, millimetres(10), Direction::z(), Direction::y());
}

} // namespace

TEST_CASE("a lens cut from a plane has the area of its outline", "[remedy]")
{
    const LensCarrier carrier(plate(Point::Zero(), 400, 300, 12));
    const LensSeat seat = middle_seat(carrier);
    CHECK(seat.facing.vector().x() == Approx(1));
    const LensPatch patch = carrier.cut(seat, oblong, millimetres(60));
    // 60 by 30.
    CHECK(in_mm2(area_of(patch.mesh)) == Approx(1800));
    CHECK(patch.filled == Approx(1));
    const Box box = box_of(patch.mesh);
    CHECK(box.size().y() == Approx(60));
    CHECK(box.size().z() == Approx(30));
}

TEST_CASE("a round lens is a circle but for a third of a percent", "[remedy]")
{
    const LensCarrier carrier(plate(Point::Zero(), 400, 300, 12));
    const LensPatch patch = carrier.cut(middle_seat(carrier), round_lens, millimetres(50));
    const double circle = 3.14159265358979 * 25 * 25;
    CHECK(in_mm2(area_of(patch.mesh)) == Approx(circle).epsilon(0.003));
    CHECK(in_mm2(round_lens.area(millimetres(50))) == Approx(in_mm2(area_of(patch.mesh))));
    CHECK(in_mm(round_lens.width_for(round_lens.area(millimetres(50)))) == Approx(50));
}

TEST_CASE("a lens that reaches over the end of its surface does not fill its outline", "[remedy]")
{
    const LensCarrier carrier(plate(Point::Zero(), 100, 100, 10));
    const LensSeat seat = middle_seat(carrier);
    CHECK(carrier.cut(seat, oblong, millimetres(80)).filled >= wholly_filled);
    CHECK(carrier.cut(seat, oblong, millimetres(120)).filled < wholly_filled);
}

TEST_CASE("a lens does not run over a crease of its surface", "[remedy]")
{
    // The front and the side of a box meet at 90 degrees on the line y = 50.
    const LensCarrier carrier(box({-200, -50, -50}, {0, 50, 50}));
    const LensSeat seat = carrier.seat(
        [&] {
            std::uint32_t front = 0;
            for (std::uint32_t f = 0; f < carrier.mesh().facets.size(); ++f)
                if (area_vector(carrier.mesh(), f).x() > 0)
                    front = f;
            return front;
        }(),
        millimetres(200), Direction::z(), Direction::y());
    CHECK(seat.facing.vector().x() == Approx(1));
    const LensPatch patch = carrier.cut(seat, round_lens, millimetres(300));
    CHECK(in_mm2(area_of(patch.mesh)) == Approx(100 * 100));
    CHECK(patch.filled < 0.2);
}

TEST_CASE("of two lenses at one place the wider holds the narrower", "[remedy]")
{
    const LensCarrier carrier(cylinder_wall(300, 400, degrees(-60), degrees(60), 40));
    std::uint32_t front = 0;
    for (std::uint32_t f = 0; f < carrier.mesh().facets.size(); ++f)
        if (area_vector(carrier.mesh(), f).normalized().x() > 0.99)
            front = f;
    const LensSeat seat = carrier.seat(front, millimetres(30), Direction::z(), Direction::y());
    double before = 0;
    for (double width = 20; width <= 120; width += 10) {
        const LensPatch patch = carrier.cut(seat, round_lens, millimetres(width));
        CHECK(patch.filled >= wholly_filled);
        const double area = in_mm2(area_of(patch.mesh));
        CHECK(area > before);
        // What lies on a bent surface is larger than its outline.
        CHECK(area >= in_mm2(round_lens.area(millimetres(width))) * 0.9999);
        before = area;
    }
}
