#include "geometry/placement.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

bool near(const Vector& a, const Vector& b) { return (a - b).norm() < 1e-9; }

/// A tetrahedron with its facets wound counter-clockwise seen from outside.
const TriangleMesh tetrahedron{{{0, 0, 0}, {3, 0, 0}, {0, 4, 0}, {0, 0, 5}},
                               {{0, 2, 1}, {0, 1, 3}, {0, 3, 2}, {1, 2, 3}}};

/// Six times the volume that the facets enclose: positive only if they face outwards.
double volume_of(const TriangleMesh& mesh)
{
    double sum = 0;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        sum += mesh.corner(f, 0).dot(mesh.corner(f, 1).cross(mesh.corner(f, 2)));
    return sum / 6;
}

} // namespace

TEST_CASE("a placement that was given nothing moves nothing", "[geometry]")
{
    CHECK(Placement().is_identity());
    CHECK(Placement()(Point(1, 2, 3)) == Point(1, 2, 3));
    CHECK_FALSE(Placement::shift({0, 0, 1}).is_identity());
}

TEST_CASE("a shift moves points and leaves directions alone", "[geometry]")
{
    const Placement up = Placement::shift({0, 0, 12});
    CHECK(up(Point(1, 2, 3)) == Point(1, 2, 15));
    CHECK(up(Direction::x()).vector() == Vector(1, 0, 0));
    CHECK_FALSE(up.mirrors());
}

TEST_CASE("a turn goes counter-clockwise, seen against its axis", "[geometry]")
{
    const Placement quarter = Placement::turn({10, 0, 0}, Direction::z(), degrees(90));
    CHECK(near(quarter(Point(11, 0, 7)), {10, 1, 7}));
    CHECK(near(quarter(Direction::x()).vector(), {0, 1, 0}));
    CHECK_FALSE(quarter.mirrors());
}

TEST_CASE("a mirror keeps its plane and exchanges the sides", "[geometry]")
{
    const Placement mirror = Placement::mirror({0, 5, 0}, Direction::y());
    CHECK(near(mirror(Point(1, 5, 3)), {1, 5, 3}));
    CHECK(near(mirror(Point(1, 7, 3)), {1, 3, 3}));
    CHECK(mirror.mirrors());
    CHECK(near((mirror * mirror)(Point(4, -8, 9)), {4, -8, 9}));
    CHECK_FALSE((mirror * mirror).mirrors());
}

TEST_CASE("axes are taken onto axes", "[geometry]")
{
    Eigen::Matrix3d from, to;
    from.col(0) = -Vector::UnitX();
    from.col(1) = -Vector::UnitY();
    from.col(2) = Vector::UnitZ();
    to.col(0) = Vector::UnitZ();
    to.col(1) = Vector::UnitX();
    to.col(2) = Vector::UnitY();
    const Placement to_from = Placement::axes(to, from);
    for (int i = 0; i < 3; ++i)
        CHECK(near(to_from(Point(from.col(i))), to.col(i)));
}

TEST_CASE("a chain moves as its links do, last one first, and its inverse goes back", "[geometry]")
{
    const Placement first = Placement::turn({1, 2, 3}, Direction::x(), degrees(33));
    const Placement second = Placement::mirror({0, 4, 0}, Direction::along({1, 1, 0}));
    const Point p(-20, 31, 7);
    CHECK(near((second * first)(p), second(first(p))));
    CHECK(near((second * first).inverse()((second * first)(p)), p));
}

TEST_CASE("lengths stay under any placement", "[geometry]")
{
    const Placement move = Placement::shift({100, 0, -3}) *
                           Placement::turn({5, 5, 5}, Direction::along({1, 2, 2}), degrees(77)) *
                           Placement::mirror({0, 0, 9}, Direction::z());
    CHECK((move(Point(1, 2, 3)) - move(Point(4, 6, 15))).norm() == Approx(13));
}

TEST_CASE("a mirrored body still faces outwards, and keeps its volume", "[geometry]")
{
    CHECK(volume_of(tetrahedron) == Approx(10));
    const Placement mirror = Placement::mirror({20, 0, 0}, Direction::x());
    CHECK(volume_of(placed(tetrahedron, mirror)) == Approx(10));
    const Placement turn = Placement::turn({1, 1, 1}, Direction::y(), degrees(50));
    CHECK(volume_of(placed(tetrahedron, turn)) == Approx(10));
    CHECK(placed(tetrahedron, turn).facets == tetrahedron.facets);
}
