#include "geometry/covered_area.h"

#include "geometry/plane_shapes.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

namespace {

double covered(std::initializer_list<std::vector<PlaneTriangle>> parts)
{
    std::vector<PlaneTriangle> all;
    for (const auto& part : parts)
        all.insert(all.end(), part.begin(), part.end());
    return in_mm2(covered_area(all));
}

} // namespace

TEST_CASE("areas that only touch add up exactly", "[geometry]")
{
    CHECK(covered({}) == 0);
    CHECK(covered({rectangle(0, 10, 0, 10)}) == 100);
    CHECK(covered({rectangle(0, 10, 0, 10), rectangle(10, 20, 0, 10), rectangle(20, 30, 10, 20)}) ==
          300);
}

TEST_CASE("what lies over each other counts once", "[geometry]")
{
    CHECK(covered({rectangle(0, 10, 0, 10), rectangle(5, 15, 5, 15)}) == Approx(175).margin(1e-3));
    CHECK(covered({rectangle(0, 10, 0, 10), rectangle(0, 10, 0, 10)}) == Approx(100).margin(1e-3));
    CHECK(covered({rectangle(0, 10, 4, 5), rectangle(4, 5, 0, 10), rectangle(3, 6, 3, 6)}) ==
          Approx(10 + 10 - 1 + 9 - 5).margin(1e-3));
}

TEST_CASE("triangles wound the other way count alike", "[geometry]")
{
    std::vector<PlaneTriangle> back = rectangle(5, 15, 5, 15);
    for (PlaneTriangle& t : back)
        std::swap(t[0], t[1]);
    CHECK(covered({rectangle(0, 10, 0, 10), back}) == Approx(175).margin(1e-3));
}

TEST_CASE("a fine net covers what its outline holds, wherever its corners lie", "[geometry]")
{
    std::vector<PlaneTriangle> net;
    for (int i = 0; i < 30; ++i)
        for (int j = 0; j < 30; ++j) {
            const auto cell = rectangle(i / 3.0, (i + 1) / 3.0, j / 7.0, (j + 1) / 7.0);
            net.insert(net.end(), cell.begin(), cell.end());
        }
    CHECK(in_mm2(covered_area(net)) == Approx(10 * 30 / 7.0).epsilon(1e-9));
}
