#include "drawing/intrusion_map.h"

#include "drawing/depth_map.h"
#include "words/numbers.h"

#include <algorithm>

namespace glim {

namespace {

/// Against the mean normal of the facets that reach in.
Direction way_out(const Intrusion& intrusion)
{
    Vector sum = Vector::Zero();
    for (std::size_t f = 0; f < intrusion.mesh.facets.size(); ++f) {
        const Facet& facet = intrusion.mesh.facets[f];
        if (std::any_of(facet.begin(), facet.end(),
                        [&](std::uint32_t p) { return intrusion.depths[p] > Length(); }))
            sum += area_vector(intrusion.mesh, f);
    }
    return sum.norm() > 0 ? Direction::along(-sum) : -Direction::z();
}

} // namespace

Figure intrusion_map(const Intrusion& intrusion, const std::string& name, const Vehicle& vehicle)
{
    Figure figure =
        depth_map({intrusion.surface.surface, way_out(intrusion), intrusion.mesh, intrusion.depths},
                  name, vehicle);
    figure.title = "Where " + name + " reaches into the space";
    figure.caption = "How deep " + name +
                     " reaches into the keep-clear space, along its normal; "
                     "lines of equal depth in mm, coordinates of the vehicle. Deepest " +
                     rounded(in_mm(intrusion.depth), 2) + " mm.";
    figure.alt = figure.caption;
    return figure;
}

} // namespace glim
