#include "geometry/gap.h"

#include "geometry/plane_shapes.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

namespace {

double distance(std::span<const PlaneTriangle> a, std::span<const PlaneTriangle> b)
{
    return in_mm(gap_between(a, b)->distance);
}

std::vector<PlaneTriangle> moved(std::vector<PlaneTriangle> triangles, const Point2& by)
{
    for (PlaneTriangle& t : triangles)
        for (Point2& p : t)
            p += by;
    return triangles;
}

/// Thrown about in a square of `size`.
std::vector<PlaneTriangle> confetti(Numbers& numbers, int count, double size)
{
    std::vector<PlaneTriangle> all;
    for (int i = 0; i < count; ++i) {
        const Point2 at = numbers.point(size);
        all.push_back({at + numbers.point(3), at + numbers.point(3), at + numbers.point(3)});
    }
    return all;
}

} // namespace

TEST_CASE("rectangles side by side are as far apart as their edges", "[geometry]")
{
    const auto gap = gap_between(rectangle(0, 10, 0, 10), rectangle(17, 20, 2, 5));
    CHECK(in_mm(gap->distance) == 7);
    CHECK(gap->from.x() == 10);
    CHECK(gap->to.x() == 17);
    CHECK(gap->from.y() == gap->to.y());
}

TEST_CASE("rectangles corner to corner are as far apart as the corners", "[geometry]")
{
    const auto gap = gap_between(rectangle(0, 10, 0, 10), rectangle(13, 20, 14, 20));
    CHECK(in_mm(gap->distance) == Approx(5));
    CHECK(gap->from == Point2(10, 10));
    CHECK(gap->to == Point2(13, 14));
}

TEST_CASE("a corner over the middle of an edge is nearest to its foot", "[geometry]")
{
    const std::vector<PlaneTriangle> spike = {{Point2(4, 12), Point2(1, 30), Point2(8, 30)}};
    const auto gap = gap_between(rectangle(0, 10, 0, 10), spike);
    CHECK(in_mm(gap->distance) == 2);
    CHECK(gap->from == Point2(4, 10));
    CHECK(gap->to == Point2(4, 12));
}

TEST_CASE("what touches or overlaps is no distance apart, at a place common to both", "[geometry]")
{
    const auto square = rectangle(0, 10, 0, 10);
    CHECK(distance(square, rectangle(10, 20, 3, 5)) == 0);
    CHECK(distance(square, rectangle(10, 20, 10, 20)) == 0);
    CHECK(distance(square, rectangle(2, 3, 6, 6.5)) == 0);
    CHECK(distance(rectangle(2, 3, 6, 6.5), square) == 0);
    // A cross: no corner of one lies in the other.
    const auto gap = gap_between(rectangle(0, 10, 4, 5), rectangle(4, 5, 0, 10));
    CHECK(in_mm(gap->distance) == 0);
    CHECK(gap->from == gap->to);
    CHECK(gap->from.x() >= 4);
    CHECK(gap->from.x() <= 5);
    CHECK(gap->from.y() >= 4);
    CHECK(gap->from.y() <= 5);
}

TEST_CASE("a set within the hole of another is as far from it as the hole is wide", "[geometry]")
{
    std::vector<PlaneTriangle> ring;
    for (const auto& bar : {rectangle(0, 40, 0, 10), rectangle(0, 40, 30, 40),
                            rectangle(0, 10, 10, 30), rectangle(30, 40, 10, 30)})
        ring.insert(ring.end(), bar.begin(), bar.end());
    CHECK(distance(rectangle(18, 23, 19, 22), ring) == 7);
    CHECK(in_mm(gap_between(Point2(20, 14), ring)->distance) == 4);
}

TEST_CASE("from a point the way leads to the nearest triangle, and is none within it", "[geometry]")
{
    const auto square = rectangle(0, 10, 0, 10);
    const auto gap = gap_between(Point2(14, 13), square);
    CHECK(in_mm(gap->distance) == Approx(5));
    CHECK(gap->from == Point2(14, 13));
    CHECK(gap->to == Point2(10, 10));
    CHECK(in_mm(gap_between(Point2(3, 4), square)->distance) == 0);
}

TEST_CASE("triangles without area are the lines and points that they are", "[geometry]")
{
    const std::vector<PlaneTriangle> line = {{Point2(20, 0), Point2(20, 4), Point2(20, 10)}};
    const std::vector<PlaneTriangle> point = {{Point2(3, 20), Point2(3, 20), Point2(3, 20)}};
    CHECK(distance(rectangle(0, 10, 0, 10), line) == 10);
    CHECK(distance(point, rectangle(0, 10, 0, 10)) == 10);
    // On one line with it, beyond its end: not within.
    CHECK(in_mm(gap_between(Point2(20, 13), line)->distance) == 3);
    CHECK(in_mm(gap_between(Point2(20, 7), line)->distance) == 0);
}

TEST_CASE("an empty set has no gap, and none beyond the reach is told", "[geometry]")
{
    const auto square = rectangle(0, 10, 0, 10);
    CHECK_FALSE(gap_between(square, std::vector<PlaneTriangle>{}));
    CHECK_FALSE(gap_between(std::vector<PlaneTriangle>{}, square));
    CHECK_FALSE(gap_between(Point2(0, 0), std::vector<PlaneTriangle>{}));
    const TriangleSet a(square), b(rectangle(15, 20, 0, 10));
    CHECK_FALSE(gap_between(a, b, millimetres(4.9)));
    CHECK(gap_between(a, b, millimetres(5)));
}

TEST_CASE("of equally short ways the one between the first triangles is told", "[geometry]")
{
    std::vector<PlaneTriangle> row, other;
    for (int i = 0; i < 30; ++i) {
        row.push_back({Point2(2 * i, 0), Point2(2 * i + 1, 0), Point2(2 * i, 1)});
        other.push_back({Point2(2 * i, 6), Point2(2 * i + 1, 6), Point2(2 * i, 7)});
    }
    const auto gap = gap_between(row, other);
    CHECK(in_mm(gap->distance) == 5);
    CHECK(gap->from_triangle == 0);
    CHECK(gap->to_triangle == 0);
    std::reverse(other.begin(), other.end());
    CHECK(gap_between(row, other)->to_triangle == 29);
}

TEST_CASE("the tree finds what looking at every pair finds", "[geometry]")
{
    Numbers numbers(5);
    for (int round = 0; round < 20; ++round) {
        const auto a = confetti(numbers, 60, 100);
        const auto b = moved(confetti(numbers, 60, 100), {90 + 2.0 * round, 10});
        std::optional<Gap> least;
        for (std::size_t i = 0; i < a.size(); ++i)
            for (std::size_t j = 0; j < b.size(); ++j) {
                const auto gap = gap_between(std::span(&a[i], 1), std::span(&b[j], 1));
                if (!least || gap->distance < least->distance) {
                    least = gap;
                    least->from_triangle = i;
                    least->to_triangle = j;
                }
            }
        const auto gap = gap_between(a, b);
        CHECK(gap->distance == least->distance);
        CHECK(gap->from_triangle == least->from_triangle);
        CHECK(gap->to_triangle == least->to_triangle);
    }
}

TEST_CASE("the gap is the same either way round", "[geometry]")
{
    Numbers numbers(6);
    for (int round = 0; round < 20; ++round) {
        const auto a = confetti(numbers, 40, 50);
        const auto b = moved(confetti(numbers, 40, 50), {60, 5});
        CHECK(distance(a, b) == distance(b, a));
    }
}
