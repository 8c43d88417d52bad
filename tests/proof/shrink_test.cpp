#include "shapes/exact_definition.h"
#include "shapes/shrink.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

/// A wrong claim, made to fail: "nothing ever hides more than 1 mm2 of the lamp".
bool hides_more_than_1_mm2(const RandomScene& scene)
{
    RandomScene bare = scene;
    std::erase_if(bare.bodies, [](const SceneBody& b) { return b.part != BodyPart::lit; });
    const LampStanding lamp = lamp_of(scene);
    const ExactDefinition with(study_of(scene), lamp);
    const ExactDefinition without(study_of(bare), lamp);
    for (const Bearing& b : scene.bearings) {
        const Direction d = toward(lamp, b);
        if (without.visible(d) - with.visible(d) > square_millimetres(1))
            return true;
    }
    return false;
}

std::size_t facets_of(const RandomScene& scene)
{
    std::size_t sum = 0;
    for (const SceneBody& body : scene.bodies)
        sum += body.mesh.facets.size();
    return sum;
}

/// Every scene that is this one without one facet, or without one body where that is its last.
std::vector<RandomScene> each_one_facet_less(const RandomScene& scene)
{
    std::vector<RandomScene> all;
    for (std::size_t b = 0; b < scene.bodies.size(); ++b)
        for (std::size_t f = 0; f < scene.bodies[b].mesh.facets.size(); ++f) {
            RandomScene less = scene;
            auto& facets = less.bodies[b].mesh.facets;
            facets.erase(facets.begin() + std::ptrdiff_t(f));
            if (facets.empty())
                less.bodies.erase(less.bodies.begin() + std::ptrdiff_t(b));
            all.push_back(std::move(less));
        }
    return all;
}

} // namespace

TEST_CASE("a wrong claim is shrunk to a scene of which nothing can be spared", "[proof]")
{
    int shrunk_scenes = 0;
    for (std::uint64_t seed = 1; shrunk_scenes < 4; ++seed) {
        REQUIRE(seed < 100);
        const RandomScene scene = random_scene(seed);
        if (!hides_more_than_1_mm2(scene) || facets_of(scene) < 12)
            continue;
        ++shrunk_scenes;
        const RandomScene small = shrunk(scene, hides_more_than_1_mm2);
        CAPTURE(seed);
        CHECK(hides_more_than_1_mm2(small));
        CHECK(small.bearings.size() == 1);
        CHECK(facets_of(small) < facets_of(scene));
        for (const RandomScene& less : each_one_facet_less(small))
            CHECK_FALSE((!less.bodies.empty() && less.bodies.front().part == BodyPart::lit &&
                         hides_more_than_1_mm2(less)));
    }
}
