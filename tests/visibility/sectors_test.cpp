#include "visibility/sectors.h"

#include "shapes/random_numbers.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace glim;
using glim::shapes::RandomNumbers;

namespace {

/// By its angle, as the header has it.
int sector_at(const Point2& way)
{
    const double turns = std::atan2(way.y(), way.x()) / (2 * std::numbers::pi);
    return static_cast<int>(std::floor(sector_count * (turns < 0 ? turns + 1 : turns))) %
           sector_count;
}

bool holds(Sectors sectors, const Point2& way) { return (sectors >> sector_at(way) & 1U) != 0; }

Patch triangle(RandomNumbers& random, double size)
{
    const auto corner = [&] { return Point2(random.real(-size, size), random.real(-size, size)); };
    const Point2 a = corner(), b = corner(), c = corner();
    return {a, b, c, c};
}

} // namespace

TEST_CASE("every way that meets a patch lies in one of its sectors", "[visibility]")
{
    RandomNumbers random(7);
    for (int i = 0; i < 2000; ++i) {
        const Patch patch = triangle(random, 5);
        const Point2 from(random.real(-8, 8), random.real(-8, 8));
        const PatchSeen seen = seen_from(from, patch);
        for (int k = 0; k < 20; ++k) {
            const double u = random.real(0, 1), v = random.real(0, 1 - u);
            const Point2 way =
                patch[0] + u * (patch[1] - patch[0]) + v * (patch[2] - patch[0]) - from;
            CHECK(holds(seen.ways, way));
            CHECK(way.norm() >= seen.distance_mm - 1e-9);
        }
    }
}

TEST_CASE("a small patch far away lies in one sector or two", "[visibility]")
{
    const Patch patch = {Point2(10, 3), Point2(10.5, 3), Point2(10, 3.5), Point2(10, 3.5)};
    const PatchSeen seen = seen_from(Point2::Zero(), patch);
    CHECK(seen.ways == 1);
    CHECK(seen.distance_mm == Approx(std::hypot(10.0, 3.0)));
    CHECK(seen_from({-3, 0.2}, patch).ways == 1);
    CHECK(seen_from({10.2, 10}, patch).ways == (1U << 5 | 1U << 6)); // straight below
}

TEST_CASE("a patch is nowhere for one who stands in it", "[visibility]")
{
    const Patch patch = {Point2(0, 0), Point2(4, 0), Point2(4, 4), Point2(0, 4)};
    CHECK(seen_from({1, 2}, patch).distance_mm == 0);
    CHECK(seen_from({1, 2}, patch).ways == all_sectors);
    // A patch seen edge on has no inside.
    const Patch line = {Point2(0, 0), Point2(4, 0), Point2(2, 0), Point2(2, 0)};
    CHECK(seen_from({1, 2}, line).distance_mm == Approx(2));
    CHECK(seen_from({6, 0}, line).distance_mm == Approx(2));
}

TEST_CASE("every way into a circle lies in one of its sectors", "[visibility]")
{
    RandomNumbers random(11);
    for (int i = 0; i < 2000; ++i) {
        const Point2 centre(random.real(-5, 5), random.real(-5, 5));
        const double radius = random.real(0, 3);
        const Sectors ways = ways_into_circle(centre, radius);
        for (int k = 0; k < 20; ++k) {
            const double angle = random.real(0, 2 * std::numbers::pi);
            CHECK(holds(ways, centre + random.real(0, radius) *
                                           Point2(std::cos(angle), std::sin(angle))));
        }
    }
    CHECK(ways_into_circle({0, 0}, 0) == all_sectors);
    CHECK(ways_into_circle({3, 1}, 0) == 1);
}
