#include "visibility/lit_picture.h"

#include "visibility/picture_rays.h"
#include "visibility/touch.h"

#include <algorithm>

namespace glim {

namespace {

/// The facets of a lit surface that face the eye, for rays that come from there.
class FacingEye {
public:
    FacingEye(const TriangleMesh& lit, const Direction& toward, Length touch)
        : mesh_(only_facing(lit, toward)), caster_(Caster::flat(std::span(&mesh_, 1)))
    {
        for (std::size_t f = 0; f < mesh_.facets.size(); ++f)
            skips_.push_back(static_cast<float>(
                in_mm(skip_along_ray(touch, toward.dot(area_vector(mesh_, f).normalized())))));
    }

    bool any() const { return !skips_.empty(); }
    const Caster& caster() const { return caster_; }
    /// How much of its way a ray skips that starts on this facet, mm.
    float skip(std::uint32_t facet) const { return skips_[facet]; }

private:
    static TriangleMesh only_facing(const TriangleMesh& lit, const Direction& toward)
    {
        std::vector<std::uint32_t> facing;
        for (std::uint32_t f = 0; f < lit.facets.size(); ++f)
            if (toward.dot(area_vector(lit, f)) > 0)
                facing.push_back(f);
        return part_of(lit, facing);
    }

    TriangleMesh mesh_;
    Caster caster_;
    std::vector<float> skips_;
};

/// Where rays of one band meet the lit face: the places, and rays on from there to the eye.
struct LitStarts {
    std::vector<SamplePlace> samples;
    std::vector<RayStart> starts;
};

LitStarts lit_starts(const FacingEye& face, const PictureRays& rays, std::size_t band)
{
    const std::vector<SamplePlace> samples = samples_of_band(rays.frame(), band);
    std::vector<RayStart> starts;
    starts.reserve(samples.size());
    for (const SamplePlace& s : samples)
        starts.push_back(rays.start(s));
    const std::vector<NearestHit> hits = face.caster().nearest_hit(-rays.frame().toward, starts);
    LitStarts lit;
    for (std::size_t i = 0; i < hits.size(); ++i) {
        if (!hits[i].any())
            continue;
        const Point p = rays.at(samples[i], hits[i].distance);
        lit.samples.push_back(samples[i]);
        lit.starts.push_back({static_cast<float>(p.x()), static_cast<float>(p.y()),
                              static_cast<float>(p.z()), face.skip(hits[i].facet)});
    }
    return lit;
}

/// Rays begin just before the lit face, so that a float's grain stays small.
Length just_before(const TriangleMesh& lit, const PictureFrame& frame, const Point& origin)
{
    constexpr double clear_mm = 1;
    double most = 0;
    for (const Point& p : lit.points)
        most = std::max(most, in_mm(frame.depth_of(p + origin)));
    return millimetres(most + clear_mm);
}

} // namespace

Area LitPicture::area_of(LitKind kind) const
{
    return static_cast<double>(std::count(samples.begin(), samples.end(), kind)) *
           area_of_sample(frame);
}

LitPicture lit_picture(const PreparedScene& scene, const LampStanding& lamp, const LampView& view,
                       const PictureFrame& frame, const Workers& workers)
{
    const TriangleMesh lit = placed(scene.lit_surface_of(lamp), Placement::shift(-scene.origin()));
    const FacingEye face(lit, frame.toward, view.touch);
    const PictureRays rays(frame, scene.origin(), just_before(lit, frame, scene.origin()));
    LitPicture picture{frame, {}};
    picture.samples.resize(std::size_t{rays.columns()} * rays.rows());
    if (!face.any())
        return picture;
    for_each_band(frame, workers, [&](std::size_t band) {
        const LitStarts begun = lit_starts(face, rays, band);
        const auto others = view.others.occluded(frame.toward, begun.starts);
        const auto approved = view.approved.occluded(frame.toward, begun.starts);
        for (std::size_t i = 0; i < begun.samples.size(); ++i)
            picture.samples[rays.index(begun.samples[i])] =
                approved[i] != 0 ? LitKind::hidden_by_approved
                : others[i] != 0 ? LitKind::hidden_by_others
                                 : LitKind::seen;
    });
    return picture;
}

} // namespace glim
