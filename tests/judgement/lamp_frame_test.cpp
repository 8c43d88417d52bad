#include "judgement/lamp_frame.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

/// Usual body CAD: x rearward, y to the right looking forward, z up.
Vehicle body_cad()
{
    Vehicle v;
    v.forward = -Direction::x();
    v.up = Direction::z();
    return v;
}

bool along(const Direction& d, double x, double y, double z)
{
    return (d.vector() - Vector(x, y, z)).norm() < 1e-12;
}

} // namespace

TEST_CASE("left and right are as seated", "[judgement]")
{
    CHECK(along(body_cad().left(), 0, -1, 0));
}

TEST_CASE("outboard is away from the median plane on both sides", "[judgement]")
{
    const Vehicle v = body_cad();
    CHECK(along(lamp_frame(v, Ground{}, Side::left, v.forward, ReferenceAxis::forward).outboard, 0,
                -1, 0));
    CHECK(along(lamp_frame(v, Ground{}, Side::right, v.forward, ReferenceAxis::forward).outboard, 0,
                1, 0));
    CHECK(along(lamp_frame(v, Ground{}, Side::left, -v.forward, ReferenceAxis::rearward).outboard,
                0, -1, 0));
    CHECK(along(lamp_frame(v, Ground{}, Side::right, -v.forward, ReferenceAxis::rearward).outboard,
                0, 1, 0));
}

TEST_CASE("an axis that points outboard counts H to the front", "[judgement]")
{
    const Vehicle v = body_cad();
    const Direction axis = axis_of(v, Side::left, ReferenceAxis::outboard);
    CHECK(along(axis, 0, -1, 0));
    CHECK(along(lamp_frame(v, Ground{}, Side::left, axis, ReferenceAxis::outboard).outboard, -1, 0,
                0));
}

TEST_CASE("the equator is parallel to the ground, not to the lamp", "[judgement]")
{
    // Nose-down rake: the ground's normal leans; a reference axis along CAD is laid into it.
    const Vehicle v = body_cad();
    Ground ground;
    ground.up = Direction::along(Vector(0.01, 0, 1));
    const LampFrame frame = lamp_frame(v, ground, Side::left, v.forward, ReferenceAxis::forward);
    CHECK(frame.forward.dot(ground.up) == Approx(0).margin(1e-12));
    CHECK(frame.up.dot(ground.up) == Approx(1));
    CHECK(frame.outboard.dot(frame.forward) == Approx(0).margin(1e-12));
}

TEST_CASE("an axis turned far outboard does not swap inboard and outboard", "[judgement]")
{
    const Vehicle v = body_cad();
    for (const double turn : {44.0, 50.0}) {
        const Direction axis =
            direction_of({degrees(turn), degrees(0)}, {v.forward, v.left(), v.up});
        const LampFrame frame = lamp_frame(v, Ground{}, Side::left, axis, ReferenceAxis::forward);
        CHECK(frame.outboard.dot(v.left()) > 0);
    }
}
