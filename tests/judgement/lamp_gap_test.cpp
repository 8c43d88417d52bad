#include "judgement/lamp_gap.h"

#include "shapes/simple_shapes.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

const Direction ahead = Direction::x();

Vehicle ahead_is_x()
{
    Vehicle v;
    v.forward = Direction::x();
    return v;
}

std::optional<GapBetween> edges(const TriangleMesh& a, const TriangleMesh& b)
{
    return edge_to_edge(a, ahead, b, ahead, ahead_is_x());
}

} // namespace

TEST_CASE("how far one lamp stands ahead of the other does not count", "[judgement]")
{
    const auto gap =
        edges(shapes::plate({900, 600, 700}, 100, 40), shapes::plate({700, 480, 700}, 60, 80));
    REQUIRE(gap);
    CHECK(in_mm(gap->distance) == Approx(550 - 510));
    // The ends are places of the lamps themselves.
    CHECK(gap->from.x() == Approx(900));
    CHECK(gap->from.y() == Approx(550));
    CHECK(gap->to.x() == Approx(700));
    CHECK(gap->to.y() == Approx(510));
    CHECK(gap->from.z() == Approx(gap->to.z()));
}

TEST_CASE("the gap is the shortest way, also aslant", "[judgement]")
{
    // Apart by 30 across and by 40 in height.
    const auto gap =
        edges(shapes::plate({0, 600, 700}, 100, 40, 3), shapes::plate({50, 470, 600}, 100, 80, 3));
    REQUIRE(gap);
    CHECK(in_mm(gap->distance) == Approx(50));
    CHECK((gap->from - Point(0, 550, 680)).norm() < 1e-9);
    CHECK((gap->to - Point(50, 520, 640)).norm() < 1e-9);
}

TEST_CASE("lamps one behind the other overlap in the projection", "[judgement]")
{
    const auto gap =
        edges(shapes::plate({900, 600, 700}, 100, 40), shapes::plate({500, 620, 710}, 10, 10));
    REQUIRE(gap);
    CHECK(in_mm(gap->distance) == 0);
    CHECK(gap->from.y() == Approx(gap->to.y()));
    CHECK(gap->from.z() == Approx(gap->to.z()));
    CHECK(gap->from.x() == Approx(900));
    CHECK(gap->to.x() == Approx(500));
}

TEST_CASE("forward is laid level before the lamps are projected", "[judgement]")
{
    // Vehicle drawn with its forward pitched: the plane stays upright to the vehicle's own up.
    Vehicle pitched = ahead_is_x();
    pitched.forward = Direction::along(Vector(1, 0, 0.2));
    const auto gap = edge_to_edge(shapes::plate({900, 600, 700}, 100, 40), ahead,
                                  shapes::plate({100, 600, 600}, 100, 40), ahead, pitched);
    REQUIRE(gap);
    CHECK(in_mm(gap->distance) == Approx(60));
}

TEST_CASE("only what faces the lamp's own axis has an edge", "[judgement]")
{
    // A lamp that faces ahead and another that faces to the left, its surface 5 deep: projected
    // along x it is an upright line at y = 500.
    const TriangleMesh facing_left =
        shapes::moved(shapes::turned(shapes::plate({0, 0, 0}, 5, 40), degrees(90)), {0, 500, 700});
    const TriangleMesh facing_ahead = shapes::plate({900, 600, 700}, 100, 40);
    const auto gap = edge_to_edge(facing_ahead, ahead, facing_left, Direction::y(), ahead_is_x());
    REQUIRE(gap);
    CHECK(in_mm(gap->distance) == Approx(50));
    CHECK(gap->to.y() == Approx(500));
    CHECK(std::abs(gap->to.x()) <= 2.5 + 1e-9);
    CHECK_FALSE(edge_to_edge(facing_ahead, ahead, facing_left, ahead, ahead_is_x()));
    CHECK_FALSE(centroid_to_edge(facing_ahead, ahead, facing_left, ahead, ahead_is_x()));
}

TEST_CASE("from the centroid the way leads to the nearest edge", "[judgement]")
{
    const TriangleMesh lamp = shapes::plate({900, 600, 700}, 100, 40);
    const TriangleMesh other = shapes::plate({700, 480, 720}, 60, 80);
    const auto gap = centroid_to_edge(lamp, ahead, other, ahead, ahead_is_x());
    REQUIRE(gap);
    CHECK(in_mm(gap->distance) == Approx(90));
    CHECK((gap->from - Point(900, 600, 700)).norm() < 1e-9);
    CHECK((gap->to - Point(700, 510, 700)).norm() < 1e-9);
    // The other way: from (480, 720) to the corner (550, 720).
    const auto back = centroid_to_edge(other, ahead, lamp, ahead, ahead_is_x());
    REQUIRE(back);
    CHECK(in_mm(back->distance) == Approx(70));
}

TEST_CASE("a centroid within the other lamp is no distance from it", "[judgement]")
{
    const TriangleMesh around = shapes::plate({700, 600, 700}, 300, 300);
    const auto gap = centroid_to_edge(shapes::plate({900, 600, 700}, 20, 20), ahead, around, ahead,
                                      ahead_is_x());
    REQUIRE(gap);
    CHECK(in_mm(gap->distance) == 0);
    CHECK((gap->to - Point(700, 600, 700)).norm() < 1e-9);
}

TEST_CASE("with the front towards -x the gap is the same", "[judgement]")
{
    Vehicle body_cad;
    body_cad.forward = -Direction::x();
    const auto gap = edge_to_edge(
        turned_over(shapes::plate({-900, -600, 700}, 100, 40)), -Direction::x(),
        turned_over(shapes::plate({-700, -480, 700}, 60, 80)), -Direction::x(), body_cad);
    REQUIRE(gap);
    CHECK(in_mm(gap->distance) == Approx(40));
    CHECK(gap->from.y() == Approx(-550));
    CHECK(gap->to.y() == Approx(-510));
}
