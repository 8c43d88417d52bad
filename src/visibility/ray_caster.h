#pragma once

#include "geometry/placement.h"
#include "visibility/facet_hits.h"

#include <cstdint>
#include <memory>
#include <span>
#include <vector>

namespace glim {

/// All places in this room's headers are in the *scene frame*: the vehicle frame shifted, in
/// double, to one origin near the lamps, before anything becomes a float. Far from the origin a
/// float's grain would be a hundred times coarser.

/// Where a ray starts, and how much of its first way is skipped.
struct RayStart {
    float x, y, z;
    float skip; ///< mm along the ray within which nothing blocks
};

/// One mesh, ready for rays. Made once, placed many times, shared by casters.
class PreparedPart {
public:
    /// `mesh` is in the scene frame once it is shifted by `into_scene`, which is done in double.
    /// Every facet blocks, from both sides, as read.
    explicit PreparedPart(const TriangleMesh& mesh, const Vector& into_scene = Vector::Zero());
    ~PreparedPart();
    PreparedPart(const PreparedPart&) = delete;
    PreparedPart& operator=(const PreparedPart&) = delete;

    /// 1 where a ray meets the mesh beyond its skip, else 0; all in the part's own frame.
    /// Thread-safe.
    std::vector<std::uint8_t> occluded(const Direction& toward,
                                       std::span<const RayStart> starts) const;

private:
    friend class Caster;
    struct Scene;
    std::unique_ptr<Scene> scene_;
};

struct PlacedPart {
    std::shared_ptr<const PreparedPart> part;
    Placement placement; ///< scene frame from the part's own
};

/// What a ray meets first.
struct NearestHit {
    static constexpr std::uint32_t nothing = ~std::uint32_t{0};

    std::uint32_t part = nothing; ///< place in the caster
    std::uint32_t facet = 0;      ///< place in the part's mesh
    float distance = 0;           ///< mm along the ray

    bool any() const { return part != nothing; }
};

/// What may stand in the way, asked by bundles of parallel rays. Thread-safe to ask.
///
///     const Caster caster({{nose, Placement()}, {nose, mirror}});
///     const auto hidden = caster.occluded(toward, starts);   // one 0 or 1 a ray
class Caster {
public:
    /// One tree a part under instances: the base layout.
    explicit Caster(std::vector<PlacedPart> parts);
    /// All triangles in one tree: faster to ask, slower to change. Answers the same but for the
    /// rounding of placements to float.
    static Caster flat(std::span<const TriangleMesh> meshes_in_scene_frame);

    ~Caster();
    Caster(Caster&&) noexcept;
    Caster& operator=(Caster&&) noexcept;

    std::size_t part_count() const;
    /// Nothing of the parts lies further than this from the scene frame's zero.
    Length extent() const;
    /// 1 where a ray meets anything beyond its skip, else 0.
    std::vector<std::uint8_t> occluded(const Direction& toward,
                                       std::span<const RayStart> starts) const;
    /// The same of what lies no further than `reach` along the ray.
    std::vector<std::uint8_t> occluded(const Direction& toward, std::span<const RayStart> starts,
                                       Length reach) const;
    /// Of each ray the nearest facet beyond its skip. For pictures: quicker than first_hit() where
    /// much lies behind each other, but it knows no tie: of facets at one distance to the last bit
    /// it names the lowest part and facet, and of others in one place the one that rounding puts
    /// before.
    std::vector<NearestHit> nearest_hit(const Direction& toward,
                                        std::span<const RayStart> starts) const;
    /// Of each ray the first facet beyond its skip, or none; ties as in facet_hits.h. Places of
    /// parts as given to the constructor.
    FacetHits first_hit(const Direction& toward, std::span<const RayStart> starts,
                        Length tie) const;
    /// Of each ray the first facet of every part that it meets beyond its skip, by part.
    FacetHits first_hit_of_every_part(const Direction& toward, std::span<const RayStart> starts,
                                      Length tie) const;

private:
    Caster();
    struct Scene;
    std::unique_ptr<Scene> scene_;
};

} // namespace glim
