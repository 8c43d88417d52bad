#include "drawing/field_grid.h"

#include "specimens/made_fields.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

namespace {

/// Inboard 45 above the horizontal, 20 below it.
const Field notched{{rectangle(-45, 30, 0, 15), rectangle(-20, 30, -15, 0)}};

double plane(double h, double v) { return 3 * h - 7 * v + 2; }

std::optional<double> value(const FigureOnGrid& f, double h, double v)
{
    return f.grid().value_at({degrees(h), degrees(v)}, f.figures());
}

} // namespace

TEST_CASE("a figure is bilinear between nodes and unknown outside the field", "[drawing]")
{
    const FigureOnGrid f(notched, 5, plane);
    CHECK(*value(f, -41.3, 12.7) == Approx(plane(-41.3, 12.7)));
    CHECK(*value(f, 30, -15) == Approx(plane(30, -15)));
    CHECK(*value(f, -45, 0) == Approx(plane(-45, 0)));
    CHECK_FALSE(value(f, -30, -1));
    CHECK_FALSE(value(f, 30.1, 0));
    // Halfway in a cell the mean of its corners: here h v is 0, 0, 0 and 25.
    const FigureOnGrid product(notched, 5, [](double h, double v) { return h * v; });
    CHECK(*value(product, 2.5, 2.5) == Approx(25.0 / 4));
}

TEST_CASE("the nearest node is that of the cell's quarter", "[drawing]")
{
    const FigureOnGrid f(notched, 5, [](double h, double v) { return 1000 * h + v; });
    const auto nearest = [&](double h, double v) {
        return f.figures()[*f.grid().nearest_to({degrees(h), degrees(v)})];
    };
    CHECK(nearest(11, 6) == 10005);
    CHECK(nearest(13, 8) == 15010);
    CHECK(nearest(-43, 0.1) == -45000);
    CHECK_FALSE(f.grid().nearest_to({degrees(-30), degrees(-3)}));
}

TEST_CASE("a field of one line or one point has no cells, its nodes are joined along the line",
          "[report]")
{
    const FigureOnGrid line({{rectangle(-10, 10, 0, 0)}}, 5, plane);
    CHECK_FALSE(line.grid().has_cells());
    CHECK(line.grid().joined_along_h(0, 0));
    CHECK_FALSE(line.grid().joined_along_v(0, 0));
    CHECK_FALSE(value(line, 0, 0));
    const FigureOnGrid points({{rectangle(-10, -10, 0, 0), rectangle(10, 10, 0, 0)}}, 5, plane);
    CHECK_FALSE(points.grid().has_cells());
    CHECK_FALSE(points.grid().joined_along_h(0, 0));
}
