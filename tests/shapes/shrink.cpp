#include "shapes/shrink.h"

#include <algorithm>

namespace glim::shapes {

namespace {

bool shines(const RandomScene& scene)
{
    return std::any_of(scene.bodies.begin(), scene.bodies.end(), [](const SceneBody& body) {
        return body.part == BodyPart::lit && !body.mesh.facets.empty();
    });
}

/// Tries what it is given in the scene's place, and keeps it if it fails too.
class Shrinker {
public:
    Shrinker(RandomScene scene, const Fails& fails) : scene_(std::move(scene)), fails_(fails) {}

    RandomScene shrink()
    {
        one_direction();
        do {
            changed_ = false;
            drop_bodies();
            for (std::size_t b = 0; b < scene_.bodies.size(); ++b)
                drop_facets(b);
        } while (changed_);
        return std::move(scene_);
    }

private:
    bool keep_if_it_fails(RandomScene smaller)
    {
        if (!shines(smaller) || !fails_(smaller))
            return false;
        scene_ = std::move(smaller);
        changed_ = true;
        return true;
    }

    void one_direction()
    {
        for (const Bearing& bearing : std::vector<Bearing>(scene_.bearings)) {
            RandomScene one = scene_;
            one.bearings = {bearing};
            if (keep_if_it_fails(std::move(one)))
                return;
        }
    }

    void drop_bodies()
    {
        for (std::size_t b = scene_.bodies.size(); b-- > 0;) {
            RandomScene without = scene_;
            without.bodies.erase(without.bodies.begin() + std::ptrdiff_t(b));
            keep_if_it_fails(std::move(without));
        }
    }

    /// Long runs first, then shorter ones: a large body goes in a few steps.
    void drop_facets(std::size_t body)
    {
        for (std::size_t run = scene_.bodies[body].mesh.facets.size() / 2; run > 0; run /= 2)
            for (std::size_t from = 0; from < scene_.bodies[body].mesh.facets.size();)
                if (!drop_run(body, from, run))
                    from += run;
    }

    bool drop_run(std::size_t body, std::size_t from, std::size_t run)
    {
        const TriangleMesh& mesh = scene_.bodies[body].mesh;
        std::vector<std::uint32_t> kept;
        for (std::uint32_t f = 0; f < mesh.facets.size(); ++f)
            if (f < from || f >= from + run)
                kept.push_back(f);
        if (kept.empty())
            return false; // that would be the whole body, which was tried
        RandomScene without = scene_;
        without.bodies[body].mesh = part_of(mesh, kept);
        return keep_if_it_fails(std::move(without));
    }

    RandomScene scene_;
    const Fails& fails_;
    bool changed_ = false;
};

} // namespace

RandomScene shrunk(RandomScene scene, const Fails& fails)
{
    return Shrinker(std::move(scene), fails).shrink();
}

} // namespace glim::shapes
