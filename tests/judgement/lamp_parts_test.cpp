#include "judgement/lamp_parts.h"

#include "shapes/simple_shapes.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

#include <numbers>

using namespace glim;

namespace {

const Direction ahead = Direction::x();

TriangleMesh plates(std::initializer_list<TriangleMesh> all)
{
    TriangleMesh mesh;
    for (const TriangleMesh& one : all)
        mesh = shapes::joined(mesh, one);
    return mesh;
}

} // namespace

TEST_CASE("one rectangle is one part that fills its quadrilateral", "[judgement]")
{
    const PartsOfLamp parts = parts_of_lamp(shapes::plate({0, 0, 0}, 100, 40, 6), ahead);
    CHECK(parts.parts == 1);
    CHECK(parts.share_of_quadrilateral == Approx(1));
    CHECK(parts.widest_gap == Length());
}

TEST_CASE("two squares a gap apart fill what the gap leaves", "[judgement]")
{
    const PartsOfLamp parts = parts_of_lamp(
        plates({shapes::plate({0, 0, 0}, 40, 40, 2), shapes::plate({30, 70, 0}, 40, 40, 2)}),
        ahead);
    CHECK(parts.parts == 2);
    CHECK(parts.share_of_quadrilateral == Approx(80.0 / 110));
    CHECK(in_mm(parts.widest_gap) == Approx(30));
}

TEST_CASE("the widest gap is the longest that must be bridged, not the longest there is",
          "[judgement]")
{
    // Gaps of 10, 25 and 15 in a row.
    const PartsOfLamp parts = parts_of_lamp(
        plates({shapes::plate({0, 5, 0}, 10, 10), shapes::plate({0, 25, 0}, 10, 10),
                shapes::plate({0, 60, 0}, 10, 10), shapes::plate({0, 85, 0}, 10, 10)}),
        ahead);
    CHECK(parts.parts == 4);
    CHECK(in_mm(parts.widest_gap) == Approx(25));
    CHECK(parts.share_of_quadrilateral == Approx(40.0 / 90));
}

TEST_CASE("pieces that touch or lie over each other along the axis are one part", "[judgement]")
{
    // Side by side in different depths, but with no gap as seen along x.
    CHECK(parts_of_lamp(
              plates({shapes::plate({0, 0, 0}, 40, 40), shapes::plate({30, 40, 0}, 40, 40)}), ahead)
              .parts == 1);
    const PartsOfLamp over = parts_of_lamp(
        plates({shapes::plate({0, 0, 0}, 40, 40), shapes::plate({-20, 20, 0}, 40, 40)}), ahead);
    CHECK(over.parts == 1);
    CHECK(over.share_of_quadrilateral == Approx(1)); // 60 of 60: what lies twice counts once
    // A slit of a hundredth of a millimetre, as between two faces that were cut one by one.
    const PartsOfLamp slit = parts_of_lamp(
        plates({shapes::plate({0, 0, 0}, 40, 40), shapes::plate({0, 40.01, 0}, 40, 40)}), ahead);
    CHECK(slit.parts == 1);
    CHECK(slit.widest_gap == Length());
}

TEST_CASE("a mesh torn by rounding at every edge is still one part", "[judgement]")
{
    // Each pair of facets has corners of its own, moved by up to 0.01 mm.
    TriangleMesh lamp = shapes::plate({0, 0, 0}, 200, 80, 20);
    for (std::size_t i = 0; i < lamp.points.size(); ++i)
        lamp.points[i].y() += 0.001 * static_cast<double>(i * 7 % 11);
    const PartsOfLamp parts =
        parts_of_lamp(shapes::joined(lamp, shapes::plate({0, 160, 0}, 40, 80)), ahead);
    CHECK(parts.parts == 2);
    CHECK(in_mm(parts.widest_gap) == Approx(40).margin(0.02));
    CHECK(parts.share_of_quadrilateral == Approx(240.0 / 280).epsilon(1e-3));
}

TEST_CASE("seen aslant, gaps and shares are those of that view", "[judgement]")
{
    // Two squares 30 apart across and one 30 behind the other; from 45 degrees to the left the
    // hinder one has moved by 30 towards the left and all widths shrink.
    const TriangleMesh lamp =
        plates({shapes::plate({0, 0, 0}, 40, 40), shapes::plate({-30, 70, 0}, 40, 40)});
    const Direction aslant = Direction::along(Vector(1, 1, 0));
    // Along the view's own across (-x + y) / sqrt(2): from -20 to 20, and from 80 to 120.
    const PartsOfLamp parts = parts_of_lamp(lamp, aslant);
    CHECK(parts.parts == 2);
    CHECK(in_mm(parts.widest_gap) == Approx(60 / std::sqrt(2.0)));
    CHECK(parts.share_of_quadrilateral == Approx(80.0 / 140));
    const PartsOfLamp from_the_right = parts_of_lamp(lamp, Direction::along(Vector(1, -1, 0)));
    // x + y: from -20 to 20, and from 20 to 60: they touch.
    CHECK(from_the_right.parts == 1);
    CHECK(from_the_right.share_of_quadrilateral == Approx(1));
}

TEST_CASE("facets that face away are no part", "[judgement]")
{
    const TriangleMesh lamp =
        plates({shapes::plate({0, 0, 0}, 40, 40), turned_over(shapes::plate({0, 100, 0}, 40, 40))});
    CHECK(parts_of_lamp(lamp, ahead).parts == 1);
    CHECK(parts_of_lamp(lamp, ahead).share_of_quadrilateral == Approx(1));
    const PartsOfLamp none = parts_of_lamp(shapes::plate({0, 0, 0}, 40, 40), -ahead);
    CHECK(none.parts == 0);
    CHECK(none.share_of_quadrilateral == 0);
}

TEST_CASE("a disc fills pi/4 of its square, and an L two thirds of a trapezium", "[judgement]")
{
    const PartsOfLamp disc = parts_of_lamp(shapes::disc(50, 200), ahead);
    CHECK(disc.parts == 1);
    CHECK(disc.share_of_quadrilateral == Approx(std::numbers::pi / 4).epsilon(1e-3));
    // An L of two bars 60 x 20. Its hull is a square of 60 with a corner cut off from (60, 20) to
    // (20, 60). Least is the cut prolonged to (0, 80): 60 (20 + 80) / 2.
    const PartsOfLamp angle = parts_of_lamp(
        plates({shapes::plate({0, 30, 10}, 60, 20), shapes::plate({0, 10, 40}, 20, 40)}), ahead);
    CHECK(angle.parts == 1);
    CHECK(angle.share_of_quadrilateral == Approx(2000.0 / 3000));
}

TEST_CASE("a ring of light around a dark middle is one part", "[judgement]")
{
    const PartsOfLamp ring = parts_of_lamp(
        plates({shapes::plate({0, 0, 45}, 100, 10), shapes::plate({0, 0, -45}, 100, 10),
                shapes::plate({0, 45, 0}, 10, 80), shapes::plate({0, -45, 0}, 10, 80)}),
        ahead);
    CHECK(ring.parts == 1);
    CHECK(ring.share_of_quadrilateral == Approx(0.36));
}

TEST_CASE("a mirrored lamp is made of the same parts", "[judgement]")
{
    const TriangleMesh lamp = plates({shapes::disc(30, 40), shapes::plate({5, 90, 20}, 50, 30, 3),
                                      shapes::plate({-5, 190, 40}, 30, 30)});
    const TriangleMesh mirrored = placed(lamp, Placement::mirror({0, 300, 0}, Direction::y()));
    const PartsOfLamp a = parts_of_lamp(lamp, ahead);
    const PartsOfLamp b = parts_of_lamp(mirrored, ahead);
    CHECK(a.parts == 3);
    CHECK(b.parts == a.parts);
    CHECK(b.share_of_quadrilateral == Approx(a.share_of_quadrilateral).epsilon(1e-9));
    CHECK(in_mm(b.widest_gap) == Approx(in_mm(a.widest_gap)));
}
