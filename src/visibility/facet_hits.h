#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace glim {

/// A facet that a ray meets.
struct FacetHit {
    std::uint32_t part;  ///< place in the caster
    std::uint32_t facet; ///< place in the part's mesh
    float distance;      ///< mm along the ray
};

inline bool is_nearer(const FacetHit& a, const FacetHit& b) { return a.distance < b.distance; }

/// The facets that each ray of a bundle meets, all behind each other.
class FacetHits {
public:
    std::size_t rays() const { return end_.size(); }
    std::span<const FacetHit> of(std::size_t ray) const
    {
        const std::size_t from = ray == 0 ? 0 : end_[ray - 1];
        return {hits_.data() + from, end_[ray] - from};
    }

    /// The next ray's.
    void add_ray(std::span<const FacetHit> hits)
    {
        hits_.insert(hits_.end(), hits.begin(), hits.end());
        end_.push_back(hits_.size());
    }
    void expect(std::size_t rays) { end_.reserve(rays); }

private:
    std::vector<FacetHit> hits_;
    std::vector<std::size_t> end_;
};

/// Everything that one ray meets, thinned to the first facet of every part, by part. Facets within
/// `tie` mm of a part's nearest count as one place, of which the lowest facet stands for all: files
/// repeat faces, and which of the copies a tracer meets first depends on the processor. Keeps the
/// result in `met`; `distance` is that of the part's nearest facet.
void keep_first_of_every_part(std::vector<FacetHit>& met, float tie);

/// Of the first facets of every part the one nearest to the ray's start; among those within `tie`
/// mm of the nearest the one of the lowest part. Requires: not empty.
std::size_t first_of(std::span<const FacetHit> first_of_every_part, float tie);
/// That one alone; empty where the ray meets nothing.
std::span<const FacetHit> only_first(std::span<const FacetHit> first_of_every_part, float tie);

} // namespace glim
