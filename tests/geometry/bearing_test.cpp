#include "geometry/bearing.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

Bearing at(double h, double v) { return {degrees(h), degrees(v)}; }

/// The right lamp of a vehicle that drives along -x: outboard is +y there, -y on the left.
const LampFrame right_lamp{-Direction::x(), Direction::y(), Direction::z()};
const LampFrame left_lamp{-Direction::x(), -Direction::y(), Direction::z()};

} // namespace

TEST_CASE("bearings on the axes give directions on the axes, exactly", "[geometry]")
{
    CHECK(direction_of(at(0, 0), right_lamp).vector() == Vector(-1, 0, 0));
    CHECK(direction_of(at(90, 0), right_lamp).vector() == Vector(0, 1, 0));
    CHECK(direction_of(at(-90, 0), right_lamp).vector() == Vector(0, -1, 0));
    CHECK(direction_of(at(180, 0), right_lamp).vector() == Vector(1, 0, 0));
    CHECK(direction_of(at(0, 90), right_lamp).vector() == Vector(0, 0, 1));
    CHECK(direction_of(at(0, -90), right_lamp).vector() == Vector(0, 0, -1));
    CHECK(direction_of(at(45, 90), right_lamp).vector() == Vector(0, 0, 1));
}

TEST_CASE("positive H is outboard on either side, positive V is up", "[geometry]")
{
    CHECK(direction_of(at(30, 0), right_lamp).vector().y() == Approx(0.5));
    CHECK(direction_of(at(30, 0), left_lamp).vector().y() == Approx(-0.5));
    CHECK(direction_of(at(30, 10), left_lamp).vector().z() > 0);
}

TEST_CASE("a bearing is longitude and latitude about the vertical", "[geometry]")
{
    // Closed form: forward cosV cosH = cos 15 cos 45 = .683013, up sin 15 = .258819.
    const Direction d = direction_of(at(45, 15), right_lamp);
    CHECK(d.dot(right_lamp.forward) == Approx(0.683013).margin(5e-7));
    CHECK(d.dot(right_lamp.outboard) == Approx(0.683013).margin(5e-7));
    CHECK(d.dot(right_lamp.up) == Approx(0.258819).margin(5e-7));
    CHECK(direction_of(at(80, 15), left_lamp).dot(left_lamp.forward) ==
          Approx(0.167731).margin(5e-7));
}

TEST_CASE("a bearing comes back from its direction", "[geometry]")
{
    for (const LampFrame& frame : {right_lamp, left_lamp})
        for (int h = -179; h <= 180; h += 7)
            for (int v = -88; v <= 88; v += 8) {
                const Bearing back = bearing_of(direction_of(at(h, v), frame), frame);
                CHECK(in_degrees(back.h) == Approx(h).margin(1e-11));
                CHECK(in_degrees(back.v) == Approx(v).margin(1e-11));
            }
}

TEST_CASE("H is 180 straight backwards, and 0 straight up and down", "[geometry]")
{
    CHECK(bearing_of(-right_lamp.forward, right_lamp).h == degrees(180));
    CHECK(bearing_of(right_lamp.up, right_lamp) == at(0, 90));
    CHECK(bearing_of(-right_lamp.up, right_lamp) == at(0, -90));
    // A hair to the inboard side of straight backwards still belongs to 180, not to -180.
    const Direction nearly_back = Direction::along({1, -1e-20, 0});
    CHECK(bearing_of(nearly_back, right_lamp).h == degrees(180));
}
