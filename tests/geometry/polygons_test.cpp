#include "geometry/polygons.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

const std::array<Point2, 3> half_square = {Point2(0, 0), Point2(10, 0), Point2(0, 10)};

ConvexPolygon rectangle(double x0, double x1, double y0, double y1)
{
    return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
}

double left(std::vector<ConvexPolygon> covers)
{
    return in_mm2(uncovered_area(half_square, covers));
}

} // namespace

TEST_CASE("what nothing covers is whole, and what one cover covers is nothing", "[geometry]")
{
    CHECK(left({}) == 50);
    CHECK(left({rectangle(20, 30, 20, 30)}) == 50);
    CHECK(left({rectangle(-1, 11, -1, 11)}) == 0);
    CHECK(left({ConvexPolygon(half_square.begin(), half_square.end())}) == 0);
}

TEST_CASE("covers that overlap count once", "[geometry]")
{
    // Strips x < 2 and y < 2: 18 + 18 - 4 of 50.
    CHECK(left({rectangle(-1, 2, -1, 20), rectangle(-1, 20, -1, 2)}) == Approx(18).margin(1e-4));
    CHECK(left({rectangle(1, 3, 1, 3), rectangle(1, 3, 1, 3), rectangle(2, 4, 1, 3)}) ==
          Approx(50 - 6).margin(1e-4));
}

TEST_CASE("covers that share an edge leave no slit", "[geometry]")
{
    CHECK(left({rectangle(-1, 3.3333333, -1, 20), rectangle(3.3333333, 20, -1, 20)}) ==
          Approx(0).margin(1e-4));
}

TEST_CASE("a ring of covers leaves its hole", "[geometry]")
{
    CHECK(left({rectangle(0, 4, 0, 1), rectangle(0, 4, 3, 4), rectangle(0, 1, 0, 4),
                rectangle(3, 4, 0, 4)}) == Approx(50 - 12).margin(1e-4));
}

TEST_CASE("winding does not matter, to the triangle or to its covers", "[geometry]")
{
    const std::array<Point2, 3> clockwise = {half_square[0], half_square[2], half_square[1]};
    ConvexPolygon cover = rectangle(-1, 2, -1, 20);
    const ConvexPolygon other = rectangle(-1, 20, -1, 2);
    std::reverse(cover.begin(), cover.end());
    const std::vector covers = {cover, other};
    CHECK(in_mm2(uncovered_area(clockwise, covers)) == Approx(18).margin(1e-4));
}

TEST_CASE("uncovered pieces fill what is uncovered, with holes and all", "[geometry]")
{
    const auto pieces_area = [](const std::array<Point2, 3>& triangle,
                                const std::vector<ConvexPolygon>& covers) {
        double area = 0;
        for (const auto& [a, b, c] : uncovered_pieces(triangle, covers)) {
            const Point2 along = b - a, across = c - a;
            area += (along.x() * across.y() - along.y() * across.x()) / 2;
        }
        return area;
    };
    const std::vector<ConvexPolygon> hole = {rectangle(2, 3, 2, 3)};
    const std::vector<ConvexPolygon> holes = {rectangle(1, 2, 1, 2), rectangle(4, 5, 1, 2),
                                              rectangle(1, 2, 4, 5), rectangle(1.5, 3, 1.5, 3)};
    CHECK(pieces_area(half_square, {}) == 50);
    CHECK(pieces_area(half_square, hole) == Approx(49).epsilon(1e-7));
    CHECK(pieces_area(half_square, holes) == Approx(50 - 3 - 2.25 + 0.25).epsilon(1e-7));
    CHECK(pieces_area(half_square, {rectangle(-1, 11, -1, 11)}) == 0);
    const std::array<Point2, 3> clockwise = {half_square[0], half_square[2], half_square[1]};
    CHECK(pieces_area(clockwise, holes) == Approx(-(50 - 3 - 2.25 + 0.25)).epsilon(1e-7));
}

TEST_CASE("a polygon is cut at a line, which keeps what touches it", "[geometry]")
{
    const ConvexPolygon square = rectangle(0, 4, 0, 4);
    const std::array side = {-1.0, 3.0, 3.0, -1.0}; // x - 1
    CHECK(in_mm2(area_of(clipped(square, side))) == Approx(12));
    const std::array touching = {0.0, -4.0, -4.0, 0.0};
    CHECK(in_mm2(area_of(clipped(square, touching))) == 0);
}
