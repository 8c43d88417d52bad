#pragma once

#include "visibility/body_picture.h"
#include "visibility/picture_rays.h"

namespace glim {

/// How open to the sky around it a surface is, pixel by pixel: what makes hollows and gaps look
/// deep. Of one fixed set of directions every pixel asks a few, its fifteen neighbours the others,
/// and neighbours on one surface share what they found. So the rays are parallel bundles, nothing
/// is left to chance, and there is no noise.
class AmbientLight {
public:
    AmbientLight(const Caster& caster, const PictureRays& rays);

    /// Asks for the pixels of one band, whose samples are known.
    void gather(const std::vector<BodySample>& samples, std::size_t band);
    /// From 0, closed in, to 1, open. Requires: all bands were gathered; the sample has a body.
    float open_at(const std::vector<BodySample>& samples, const SamplePlace& place) const;

private:
    /// Weights of the directions asked, by how squarely they fall on the surface.
    struct Found {
        float open = 0, asked = 0;
    };
    struct Pixel {
        std::uint32_t x, y;
    };

    std::vector<Pixel> pixels_that_ask(std::size_t which, std::size_t band) const;
    std::size_t sample_of(const Pixel& p) const
    {
        return rays_.index({p.x * samples_a_side, p.y * samples_a_side});
    }
    std::size_t index_of(const Pixel& p) const
    {
        return std::size_t{p.y} * rays_.frame().width + p.x;
    }
    /// Half a pixel off, so that the surface does not close itself in.
    RayStart off_surface(const Pixel& pixel, const BodySample& sample) const;
    void ask(const std::vector<BodySample>& samples, const std::vector<Pixel>& pixels,
             const Direction& sky);

    const Caster& caster_;
    const PictureRays& rays_;
    Length reach_;
    std::vector<Found> found_; ///< one a pixel
};

} // namespace glim
