#include "visibility/ray_caster.h"

#include "shapes/rough_scene.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

/// Rays along +x, from a square of the plane x = -500.
std::vector<RayStart> square_of_starts()
{
    std::vector<RayStart> starts;
    for (float y = -200; y <= 200; y += 7.3F)
        for (float z = -200; z <= 200; z += 9.1F)
            starts.push_back({-500, y, z, 0});
    return starts;
}

Caster caster_of(const std::vector<TriangleMesh>& meshes)
{
    std::vector<PlacedPart> parts;
    parts.reserve(meshes.size());
    for (const TriangleMesh& mesh : meshes)
        parts.push_back({std::make_shared<PreparedPart>(mesh), Placement()});
    return Caster(std::move(parts));
}

} // namespace

TEST_CASE("the nearest facet is the first of all that a ray meets", "[visibility]")
{
    const std::vector<TriangleMesh> bodies = clutter(3, 80);
    const std::vector<RayStart> starts = square_of_starts();
    const auto flat = GENERATE(false, true);
    const Caster caster = flat ? Caster::flat(bodies) : caster_of(bodies);
    const std::vector<NearestHit> nearest = caster.nearest_hit(Direction::x(), starts);
    const FacetHits every = caster.first_hit_of_every_part(Direction::x(), starts, millimetres(0));
    std::size_t met = 0;
    for (std::size_t i = 0; i < starts.size(); ++i) {
        REQUIRE(nearest[i].any() == !every.of(i).empty());
        if (!nearest[i].any())
            continue;
        ++met;
        const FacetHit& first = every.of(i)[first_of(every.of(i), 0)];
        CHECK(nearest[i].part == first.part);
        CHECK(nearest[i].distance == Approx(first.distance));
    }
    CHECK(met > 20);
}

TEST_CASE("of copies in one place the lowest is the nearest", "[visibility]")
{
    const TriangleMesh one = wall(10, -300, 300, -300, 300);
    const Caster caster = caster_of({wall(20, -300, 300, -300, 300), joined(one, one), one});
    for (const NearestHit& hit : caster.nearest_hit(Direction::x(), square_of_starts())) {
        CHECK(hit.part == 1);
        CHECK(hit.facet < 2);
        CHECK(hit.distance == Approx(510));
    }
}

TEST_CASE("what lies beyond the reach is not in the way", "[visibility]")
{
    const Caster caster = caster_of({wall(100, 0, 300, -300, 300)});
    const std::vector<RayStart> starts = {{0, 10, 0, 0}, {50, 10, 0, 0}, {50, -10, 0, 0}};
    using Answers = std::vector<std::uint8_t>;
    CHECK(caster.occluded(Direction::x(), starts) == Answers{1, 1, 0});
    CHECK(caster.occluded(Direction::x(), starts, millimetres(60)) == Answers{0, 1, 0});
}

TEST_CASE("nothing lies beyond the extent", "[visibility]")
{
    const Caster caster = caster_of({wall(30, -40, 0, 0, 0), wall(-20, 0, 10, 0, 5)});
    CHECK(in_mm(caster.extent()) >= 50);
    CHECK(in_mm(caster.extent()) < 60); // the corner of a box about both
    CHECK(in_mm(Caster(std::vector<PlacedPart>{}).extent()) == 0);
}
