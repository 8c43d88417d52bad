#include "visibility/picture_frame.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("up is up in a picture, and what lies to the eye's right lies right", "[visibility]")
{
    // The eye is ahead (+x) and looks back: y, to the left of the vehicle, is on its right.
    PictureFrame frame = picture_frame(Direction::x(), Direction::z(), Direction::x());
    frame.centre = {7, 10, 20};
    frame.pixel = millimetres(0.5);
    frame.width = 80;
    frame.height = 50;
    CHECK(frame.place_of({0, 10, 20}).isApprox(Point2(40, 25)));
    CHECK(frame.place_of({0, 15, 20}).isApprox(Point2(50, 25)));
    CHECK(frame.place_of({0, 10, 23}).isApprox(Point2(40, 19)));
    CHECK(in_mm(frame.depth_of({10, 0, 0})) == Approx(3));
    CHECK(in_mm2(area_of_sample(frame)) == Approx(0.0625));
}

TEST_CASE("a frame's axes are perpendicular and right-handed from any side", "[visibility]")
{
    for (const Vector& v : {Vector(1, 2, 3), Vector(-1, 0.1, -4), Vector(0, -1, 0)}) {
        const PictureFrame frame =
            picture_frame(Direction::along(v), Direction::z(), Direction::x());
        CHECK(frame.across.dot(frame.up) == Approx(0).margin(1e-12));
        CHECK(frame.across.norm() == Approx(1));
        CHECK(frame.up.norm() == Approx(1));
        CHECK(frame.across.z() == Approx(0).margin(1e-12));
        CHECK(frame.up.z() > 0);
        CHECK(frame.toward.dot(Vector(frame.across.cross(frame.up))) == Approx(1));
    }
}

TEST_CASE("from straight above the vehicle's front is up", "[visibility]")
{
    const PictureFrame frame = picture_frame(Direction::z(), Direction::z(), Direction::x());
    CHECK(frame.up.isApprox(Vector::UnitX()));
    const PictureFrame below = picture_frame(-Direction::z(), Direction::z(), Direction::x());
    CHECK(below.up.isApprox(Vector::UnitX()));
}
