#include "shapes/random_bodies.h"
#include "shapes/random_scene.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace glim;
using namespace glim::shapes;

namespace {

std::string kind_of(const SceneBody& body) { return body.name.substr(0, body.name.rfind('-')); }

} // namespace

TEST_CASE("a seed gives the same scene again, another seed another", "[proof]")
{
    const RandomScene once = random_scene(7);
    const RandomScene again = random_scene(7);
    REQUIRE(once.bodies.size() == again.bodies.size());
    for (std::size_t b = 0; b < once.bodies.size(); ++b) {
        CHECK(once.bodies[b].name == again.bodies[b].name);
        CHECK(once.bodies[b].mesh.points == again.bodies[b].mesh.points);
        CHECK(once.bodies[b].mesh.facets == again.bodies[b].mesh.facets);
    }
    CHECK(once.bearings == again.bearings);
    CHECK(random_scene(8).bodies.front().mesh.points != once.bodies.front().mesh.points);
}

TEST_CASE("among 300 scenes is every kind of body, and every way of standing", "[proof]")
{
    std::set<std::string> kinds;
    int approved = 0;
    int twins = 0;
    int mirrored = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const RandomScene scene = random_scene(seed);
        CHECK(scene.bearings.size() == 3);
        twins += scene.twin ? 1 : 0;
        for (const SceneBody& body : scene.bodies) {
            kinds.insert(kind_of(body));
            approved += body.part == BodyPart::approved ? 1 : 0;
            mirrored += body.mirrored ? 1 : 0;
        }
    }
    CHECK(kinds.size() == lit_kinds().size() + obstacle_kinds().size());
    CHECK(approved > 50);
    CHECK(twins > 20);
    CHECK(mirrored > 100);
}
