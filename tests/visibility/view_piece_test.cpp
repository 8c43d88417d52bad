#include "visibility/view_piece.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

ViewPiece piece(std::initializer_list<std::pair<Point2, double>> corners)
{
    ViewPiece made;
    for (const auto& [at, height] : corners)
        made.add(at, height);
    return made;
}

const std::array<Point2, 3> cell = {Point2(0, 0), Point2(1, 0), Point2(0, 1)};

} // namespace

TEST_CASE("cuts by height leave the part between them", "[visibility]")
{
    const ViewPiece segment = piece({{{0, 0}, 0}, {{10, 0}, 10}});
    const ViewPiece part = segment.from(2).up_to(5);
    double least = 100;
    double most = -100;
    for (const Point2& p : part.places()) {
        least = std::min(least, p.x());
        most = std::max(most, p.x());
    }
    CHECK(least == Approx(2));
    CHECK(most == Approx(5));
    CHECK(segment.from(10.5).empty());
    CHECK(segment.up_to(-0.5).empty());
    CHECK(piece({{{0, 0}, 1}, {{4, 0}, 1}, {{0, 4}, 9}}).from(2).up_to(3).places().size() == 4);
}

TEST_CASE("segments are near a cell from the margin on", "[visibility]")
{
    const auto near = [](const Point2& a, const Point2& b, double margin) {
        return come_near(std::array{a, b}, cell, margin);
    };
    CHECK(near({-1, 0.2}, {2, 0.3}, 0));        // through it
    CHECK(near({0.2, 0.2}, {0.3, 0.3}, 0));     // inside it
    CHECK(near({-1, -0.01}, {2, -0.01}, 0.02)); // along a side
    CHECK_FALSE(near({-1, -0.03}, {2, -0.03}, 0.02));
    CHECK_FALSE(near({0.6, 0.6}, {2, 2}, 0.02)); // beyond the long side, inside its rectangle
    CHECK_FALSE(near({1.1, -1}, {1.1, 1}, 0.02));
}

TEST_CASE("with a negative margin what only touches is not near", "[visibility]")
{
    const std::array<Point2, 3> beside = {Point2(0, 0), Point2(0, -1), Point2(1, 0)};
    CHECK(come_near(beside, cell, 0));
    CHECK_FALSE(come_near(beside, cell, -1e-6));
    const std::array<Point2, 3> over = {Point2(0, 0.1), Point2(0, -1), Point2(1, 0.1)};
    CHECK(come_near(over, cell, -1e-6));
}
