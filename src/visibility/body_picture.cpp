#include "visibility/body_picture.h"

#include "visibility/ambient_light.h"
#include "visibility/picture_rays.h"

#include <Eigen/Geometry>

#include <algorithm>

namespace glim {

namespace {

/// Of a facet where it stands; zero for one without area.
Eigen::Vector3f slant_of(const PlacedMesh& body, std::uint32_t facet, const PictureFrame& frame)
{
    const TriangleMesh& mesh = *body.mesh;
    const Vector across = (mesh.corner(facet, 1) - mesh.corner(facet, 0))
                              .cross(Vector(mesh.corner(facet, 2) - mesh.corner(facet, 0)));
    const Vector n = body.placement.matrix().linear() * across;
    const Vector slant(frame.across.dot(n), frame.up.dot(n), frame.toward.dot(n));
    const double size = slant.norm();
    return size == 0 ? Eigen::Vector3f::Zero()
                     : Eigen::Vector3f((slant / (slant.z() < 0 ? -size : size)).cast<float>());
}

/// What a surface of this slant gets of the light that comes straight: some from everywhere, some
/// from the eye, some from above the eye's left shoulder.
float straight_light_on(const Eigen::Vector3f& slant)
{
    constexpr float everywhere = 0.63F, from_eye = 0.11F, from_lamp = 0.30F;
    const Eigen::Vector3f lamp = Eigen::Vector3f(-0.45F, 0.75F, 0.9F).normalized();
    return everywhere + from_eye * slant.z() + from_lamp * std::max(0.0F, slant.dot(lamp));
}

/// Without a part near it a surface gets all light, in a deep corner only this share.
constexpr float light_in_corners = 0.45F;

class BodyPainter {
public:
    BodyPainter(const PicturedBodies& bodies, const PictureFrame& frame)
        : bodies_(bodies), rays_(frame, bodies.origin, before(bodies, frame)),
          ambient_(bodies.caster, rays_)
    {
        samples_.resize(std::size_t{rays_.columns()} * rays_.rows());
    }

    BodyPicture paint(const Workers& workers)
    {
        const PictureFrame& frame = rays_.frame();
        for_each_band(frame, workers, [&](std::size_t band) {
            see(band);
            ambient_.gather(samples_, band);
        });
        for_each_band(frame, workers, [&](std::size_t band) { light(band); });
        return {frame, std::move(samples_)};
    }

private:
    /// Beyond all bodies.
    static Length before(const PicturedBodies& bodies, const PictureFrame& frame)
    {
        return bodies.caster.extent() + millimetres((frame.centre - bodies.origin).norm()) +
               frame.pixel;
    }

    void see(std::size_t band)
    {
        const std::vector<SamplePlace> places = samples_of_band(rays_.frame(), band);
        std::vector<RayStart> starts;
        starts.reserve(places.size());
        for (const SamplePlace& s : places)
            starts.push_back(rays_.start(s));
        const std::vector<NearestHit> hits =
            bodies_.caster.nearest_hit(-rays_.frame().toward, starts);
        for (std::size_t i = 0; i < places.size(); ++i) {
            const NearestHit& hit = hits[i];
            if (!hit.any())
                continue;
            samples_[rays_.index(places[i])] = {
                hit.part, hit.facet, rays_.depth(hit.distance), 0,
                slant_of(bodies_.meshes[hit.part], hit.facet, rays_.frame())};
        }
    }

    void light(std::size_t band)
    {
        for (const SamplePlace& place : samples_of_band(rays_.frame(), band)) {
            const std::size_t at = rays_.index(place);
            if (!samples_[at].any())
                continue;
            const float open = ambient_.open_at(samples_, place);
            samples_[at].light = std::clamp(straight_light_on(samples_[at].slant) *
                                                (light_in_corners + (1 - light_in_corners) * open),
                                            0.0F, 1.0F);
        }
    }

    const PicturedBodies& bodies_;
    PictureRays rays_;
    AmbientLight ambient_;
    std::vector<BodySample> samples_;
};

} // namespace

BodyPicture body_picture(const PicturedBodies& bodies, const PictureFrame& frame,
                         const Workers& workers)
{
    return BodyPainter(bodies, frame).paint(workers);
}

} // namespace glim
