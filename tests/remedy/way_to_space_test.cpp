#include "remedy/way_to_space.h"

#include "remedy/keep_clear_scenes.h"
#include "shapes/random_numbers.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace glim;
using namespace glim::test;

namespace {

bool nothing_spared(const Point&) { return false; }

std::optional<double> in_mm(const std::optional<Length>& way)
{
    return way ? std::optional(glim::in_mm(*way)) : std::nullopt;
}

/// A lens so wide that the space below it ends in a plane: at x the farthest part of the lens
/// within H is x / cos(a) away, and the space begins at z = -50 - tan(b) x / cos(a).
struct PlaneBottom {
    Angle a = degrees(30), b = degrees(15);
    KeepClearSet set = set_of(shapes::plate(Point(0, 0, 0), 2000, 100, 2), {{-a, a, -b, b}});
    double slope = tan(b) / cos(a);

    double at(double x) const { return -50 - slope * x; }
};

} // namespace

// To a plane it is the distance across it over the cosine of the way to its normal.
TEST_CASE("the way into a space is its gap over the cosine of the slant", "[remedy]")
{
    const PlaneBottom bottom;
    const Vector normal = Vector(bottom.slope, 0, 1).normalized();
    for (const double gap : {0.3, 1.4, 20.0})
        for (const double slant : {-50.0, -20.0, 0.0, 35.0}) {
            const Vector way(sin(degrees(slant)), 0, cos(degrees(slant)));
            const Point from(200, 30, bottom.at(200) - gap);
            const double known = gap * normal.z() / normal.dot(way);
            INFO("gap " << gap << " slant " << slant);
            const auto found =
                in_mm(way_in(from, way, bottom.set, millimetres(90), nothing_spared));
            REQUIRE(found);
            CHECK(*found <= known);
            CHECK(*found >= known - 3 * glim::in_mm(way_grain(millimetres(known))));
        }
}

TEST_CASE("a way is told only if it is shorter than asked, and the same for any question",
          "[remedy]")
{
    const PlaneBottom bottom;
    const Point from(200, 0, bottom.at(200) - 7);
    const auto within = [&](double most) {
        return way_in(from, Vector::UnitZ(), bottom.set, millimetres(most), nothing_spared);
    };
    const auto all = within(100);
    REQUIRE(all);
    CHECK(within(7.01) == all);
    CHECK(within(50) == all);
    CHECK_FALSE(within(6.9));
    CHECK_FALSE(way_in(from, -Vector::UnitZ(), bottom.set, millimetres(100), nothing_spared));
}

// A lens 0.05 mm high whose field is a line: some 0.06 mm thick at 300 mm.
TEST_CASE("a space as thin as paper is not stepped over", "[remedy]")
{
    const KeepClearSet thin =
        set_of(shapes::plate(Point(0, 0, 0), 150, 0.05, 1), {field(-45, 45, 0, 0)});
    for (const double gap : {0.5, 3.3, 37.3, 88.8}) {
        INFO("gap " << gap);
        const auto found = in_mm(
            way_in(Point(300, 20, -gap), Vector::UnitZ(), thin, millimetres(100), nothing_spared));
        REQUIRE(found);
        CHECK(*found < gap);
        CHECK(*found > gap - 0.06 - 3 * glim::in_mm(way_grain(millimetres(gap))));
    }
}

TEST_CASE("the gap between the spaces of two tiers is free", "[remedy]")
{
    const KeepClearSet tiers = set_of(shapes::joined(shapes::plate(Point(0, 0, 60), 150, 20, 1),
                                                     shapes::plate(Point(0, 0, -60), 150, 20, 1)),
                                      {field(-30, 30, 0, 0)});
    const auto up =
        in_mm(way_in(Point(100, 0, 0), Vector::UnitZ(), tiers, millimetres(100), nothing_spared));
    REQUIRE(up);
    CHECK(*up == Approx(50).margin(0.15));
}

TEST_CASE("what is spared does not end a way", "[remedy]")
{
    const PlaneBottom bottom;
    const Point from(200, 0, bottom.at(200) - 7);
    const auto found = in_mm(way_in(from, Vector::UnitZ(), bottom.set, millimetres(100),
                                    [&](const Point& p) { return p.z() < bottom.at(200) + 2; }));
    REQUIRE(found);
    CHECK(*found == Approx(9).margin(0.05));
}

// The same by walking in steps of a fiftieth of a millimetre.
TEST_CASE("ways in are those of a walk in small steps, for lamps and fields of all kinds",
          "[remedy]")
{
    const std::vector<KeepClearSet> sets = {
        set_of(shapes::plate(Point(0, 0, 0), 150, 60, 2), {field(-45, 80, -15, 15)}),
        set_of(raked_lens(), {field(-45, 0, -15, 0), field(-45, 0, 0, 15), field(0, 80, 5, 15)}),
        set_of(wrapped_lens(), {field(-45, 80, 0, 15), field(-45, 80, -15, 0)}),
        set_of(raked_lens(), {field(20, 25, 5, 10)})};
    shapes::RandomNumbers random(7);
    constexpr double step = 0.02, most = 60;
    std::size_t met = 0, passed = 0;
    for (const KeepClearSet& set : sets)
        for (int i = 0; i < 500; ++i) {
            const Point from(random.real(-100, 500), random.real(-400, 400),
                             random.real(-200, 200));
            if (set.holds(from))
                continue;
            const Vector way = random.direction().vector();
            std::optional<double> walked;
            for (double s = 0; s < most && !walked; s += step)
                if (set.holds(from + s * way))
                    walked = s;
            const auto found = in_mm(way_in(from, way, set, millimetres(most), nothing_spared));
            if (walked) {
                met += 1;
                INFO("from " << from.transpose() << " along " << way.transpose());
                REQUIRE(found);
                CHECK(*found <= *walked);
            }
            if (!found || (walked && *found > *walked - 0.3)) {
                passed += walked ? 0 : 1;
                continue;
            }
            // Found, and not by the walk: then it passes the space by a hair.
            bool near = false;
            for (int k = 0; k < 2000 && !near; ++k)
                near = set.holds(from + (*found + random.real(0, 0.3)) * way +
                                 0.3 * random.real(0, 1) * random.direction().vector());
            CHECK(near);
        }
    CHECK(met > 50);
    CHECK(passed > 50);
}

TEST_CASE("what is found near a place is near it", "[remedy]")
{
    const KeepClearSet set =
        set_of(wrapped_lens(), {field(-45, -20, 0, 15), field(-45, -20, -15, 0)});
    shapes::RandomNumbers random(23);
    std::size_t found = 0, seen = 0;
    for (int i = 0; i < 2000; ++i) {
        const Point p(random.real(-100, 400), random.real(-300, 200), random.real(-150, 150));
        constexpr double within = 20;
        bool near = false;
        for (int k = 0; k < 300 && !near; ++k)
            near = set.holds(p + within * random.real(0, 1) * random.direction().vector());
        seen += near ? 1 : 0;
        if (!set.is_near(p, within))
            continue;
        found += 1;
        if (!near) // by a finer look
            for (int k = 0; k < 200'000 && !near; ++k)
                near = set.holds(p + within * random.direction().vector() * random.real(0.9, 1));
        CHECK(near);
    }
    CHECK(found > 50);
    CHECK(seen > found);
}

TEST_CASE("a hull that surely misses a space holds none of it", "[remedy]")
{
    const std::vector<KeepClearSet> sets = {
        set_of(raked_lens(), {field(-45, 0, -15, 0), field(-45, 0, 0, 15), field(0, 80, 5, 15)}),
        set_of(wrapped_lens(), {field(-45, 80, -15, 15)})};
    shapes::RandomNumbers random(11);
    std::size_t missed = 0, met = 0;
    for (const KeepClearSet& set : sets)
        for (int i = 0; i < 3000; ++i) {
            const Point centre(random.real(-100, 500), random.real(-400, 400),
                               random.real(-250, 250));
            const double size = random.real(0, 1) < 0.5 ? 5 : 80;
            std::vector<Point> corners;
            const auto count = static_cast<std::size_t>(random.real(1, 8.99));
            for (std::size_t k = 0; k < count; ++k)
                corners.emplace_back(centre + size * random.direction().vector());
            const bool may_meet = set.may_meet(corners);
            (may_meet ? met : missed) += 1;
            for (int k = 0; k < 30; ++k) {
                Point inside = Point::Zero();
                double sum = 0;
                for (const Point& corner : corners) {
                    const double weight = std::pow(random.real(0, 1), 3);
                    inside += weight * corner;
                    sum += weight;
                }
                if (set.holds(inside / sum))
                    CHECK(may_meet);
            }
            if (count == 1) // exact
                CHECK(may_meet == set.holds(corners.front()));
        }
    CHECK(missed > 500);
    CHECK(met > 500);
}
