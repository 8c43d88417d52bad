#include "drawing/sight_line.h"

#include "visibility/lit_look.h"

#include <algorithm>

namespace glim {

namespace {

/// Where so small a share of the lit face is hidden, the line that tells is the free one.
constexpr double share_worth_telling = 0.002;

/// One lamp's corners that face the eye, and what each ray meets first.
struct Corners {
    LitLook::FrontCorners front;
    std::vector<Point> places; ///< scene frame
    FacetHits all, others;
};

Corners corners_of(const LampView& view, const Direction& toward)
{
    Corners corners;
    corners.front = LitLook(view, toward).front_corners();
    for (const LitLook::Index v : corners.front.vertices)
        corners.places.push_back(view.lattice.vertices()[v]);
    corners.all = view.all.first_hit(toward, corners.front.starts, view.touch);
    corners.others = view.others.first_hit(toward, corners.front.starts, view.touch);
    return corners;
}

/// The rays that meet something; those that meet nothing if that is as good as none.
std::vector<std::size_t> rays_that_tell(const Corners& corners)
{
    for (const FacetHits* hits : {&corners.others, &corners.all}) {
        std::vector<std::size_t> rays;
        for (std::size_t ray = 0; ray < hits->rays(); ++ray)
            if (!hits->of(ray).empty())
                rays.push_back(ray);
        if (static_cast<double>(rays.size()) >
            share_worth_telling * static_cast<double>(hits->rays()))
            return rays;
    }
    std::vector<std::size_t> rays;
    for (std::size_t ray = 0; ray < corners.all.rays(); ++ray)
        if (corners.all.of(ray).empty())
            rays.push_back(ray);
    return rays;
}

/// Of these rays the one that starts nearest to the middle of all their starts.
std::size_t middle_ray(const Corners& corners, const std::vector<std::size_t>& rays)
{
    Point middle = Point::Zero();
    for (const std::size_t ray : rays)
        middle += corners.places[ray] / static_cast<double>(rays.size());
    const auto off = [&](std::size_t ray) { return (corners.places[ray] - middle).squaredNorm(); };
    return *std::min_element(rays.begin(), rays.end(),
                             [&](std::size_t a, std::size_t b) { return off(a) < off(b); });
}

} // namespace

std::optional<SightLine> sight_line(const Study& study, const PreparedScene& scene,
                                    const LampLook& look, const Bearing& toward)
{
    const Direction to_eye = direction_of(toward, look.frame);
    std::optional<SightLine> line;
    for (const LampStanding& lamp : look.standings) {
        const Corners corners = corners_of(scene.view_of(lamp, study.sampling), to_eye);
        if (corners.places.empty())
            continue;
        const std::size_t ray = middle_ray(corners, rays_that_tell(corners));
        const Point from = corners.places[ray] + scene.origin();
        const auto met = corners.all.of(ray);
        if (!met.empty())
            return SightLine{to_eye, from,
                             Point(from + double{met.front().distance} * to_eye.vector()),
                             scene.obstacles_of(lamp)[met.front().part]};
        if (!line)
            line = SightLine{to_eye, from, {}, {}};
    }
    return line;
}

} // namespace glim
