#include "visibility/flock.h"

#include "geometry/direction.h"
#include "shapes/random_numbers.h"
#include "shapes/rough_scene.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

Placement any_move(RandomNumbers& random, double shift_mm, Angle turn)
{
    return Placement::shift(random.vector(0, shift_mm)) *
           Placement::turn(random.vector(0, 300), random.direction(), turn);
}

/// Around a lamp that looks along +x.
const Box lit{Point(-20, -60, -30), Point(0, 60, 30)};

std::vector<RayStart> starts_about_lamp(RandomNumbers& random)
{
    std::vector<RayStart> starts;
    for (int i = 0; i < 400; ++i)
        starts.push_back({static_cast<float>(random.real(-20, 0)),
                          static_cast<float>(random.real(-60, 60)),
                          static_cast<float>(random.real(-30, 30)), 0.05F});
    return starts;
}

} // namespace

TEST_CASE("a flock hides what a caster of its bodies hides, wherever they stand", "[visibility]")
{
    RandomNumbers random(3);
    const Placement mirror = Placement::mirror(Point::Zero(), Direction::y());
    std::size_t hidden = 0;
    for (int scene = 0; scene < 20; ++scene) {
        const Placement across = scene % 2 == 0 ? Placement() : mirror;
        const Direction toward =
            Direction::along(Vector(1, random.real(-1, 1), random.real(-0.3, 0.3)));
        FlockBefore before;
        StrayedFlock flock;
        std::vector<PlacedPart> placed;
        for (const TriangleMesh& mesh : clutter(scene, 9)) {
            const auto part = std::make_shared<PreparedPart>(mesh);
            const Placement stands = any_move(random, 3, degrees(1)) * across;
            before.bodies.push_back(static_cast<std::uint32_t>(placed.size()));
            flock.bodies.push_back({part, stands.inverse(), Straying(Placement())});
            placed.push_back({part, stands});
        }
        const std::vector<RayStart> starts = starts_about_lamp(random);
        const auto found = occluded_by(before, flock, toward, starts);
        const auto expected = Caster(std::move(placed)).occluded(toward, starts);
        std::size_t different = 0;
        for (std::size_t i = 0; i < starts.size(); ++i) {
            different += found[i] != expected[i] ? 1 : 0;
            hidden += found[i];
        }
        CHECK(different <= 1); // a ray that grazes an edge may fall either way
    }
    CHECK(hidden > 200);
}

TEST_CASE("bodies that are left out hide nothing as long as they keep within reach", "[visibility]")
{
    RandomNumbers random(5);
    std::size_t left_out = 0;
    for (int scene = 0; scene < 40; ++scene) {
        const Direction toward =
            Direction::along(Vector(1, random.real(-1, 1), random.real(-0.5, 0.5)));
        Flock flock{{}, Caster(std::vector<PlacedPart>()), millimetres(4)};
        std::vector<PlacedPart> parts;
        for (const TriangleMesh& mesh : clutter(scene, 12)) {
            flock.boxes.push_back(box_of(mesh));
            parts.push_back({std::make_shared<PreparedPart>(mesh),
                             Placement::shift(random.vector(0, in_mm(flock.reach)))});
        }
        for (const std::uint32_t kept : bodies_before(lit, flock, toward))
            parts[kept].part = nullptr;
        std::erase_if(parts, [](const PlacedPart& p) { return p.part == nullptr; });
        left_out += parts.size();
        const std::vector<RayStart> starts = starts_about_lamp(random);
        for (const std::uint8_t hidden : Caster(std::move(parts)).occluded(toward, starts))
            CHECK(hidden == 0);
    }
    CHECK(left_out > 40);
}

TEST_CASE("no point of a body drifts farther or another way than is said", "[visibility]")
{
    RandomNumbers random(9);
    for (int i = 0; i < 300; ++i) {
        const ViewPlane plane(random.direction());
        const Angle turn = degrees(i % 3 == 0 ? 0 : random.real(0, 2));
        const Point corner = random.vector(100, 300);
        const Box box{corner, corner + random.sides(1, 80)};
        StrayedBodies strayed;
        strayed.lit = Straying(any_move(random, 1, turn));
        StrayedFlock flock;
        flock.bodies.push_back({nullptr, Placement(), Straying(any_move(random, 3, turn))});
        const FlockBefore before{{0}, {box}, millimetres(1000)};
        const Drift drift = drift_toward(plane, before, lit, strayed, flock);
        CHECK(drift.strays);
        for (int k = 0; k < 20; ++k) {
            const auto in = [&](const Box& b) {
                return Point(b.least + random.sides(0, 1).cwiseProduct(b.size()));
            };
            const Point q = in(box), p = in(lit);
            const Point2 way =
                plane.project((flock.bodies[0].straying.moved(q) - q) - (strayed.lit.moved(p) - p));
            CHECK(way.norm() <= in_mm(drift.reach) + 1e-9);
            CHECK((ways_into_circle(-way, 1e-9) & drift.behind) != 0);
        }
    }
}

TEST_CASE("bodies that move with the lit face do not stray", "[visibility]")
{
    const Straying both(Placement::shift({1, -2, 3}));
    StrayedBodies strayed;
    strayed.lit = both;
    StrayedFlock flock;
    flock.bodies.push_back({nullptr, Placement(), both});
    const FlockBefore before{{0}, {lit}, millimetres(10)};
    CHECK_FALSE(drift_toward(ViewPlane(Direction::x()), before, lit, strayed, flock).strays);
}
