#pragma once

#include "drawing/axis_view.h"
#include "drawing/figure.h"
#include "drawing/surface_section.h"
#include "remedy/relief.h"

namespace glim {

/// A plane across an axis of the vehicle through the deepest point of a relief, and how it cuts the
/// surface before and after.
struct ReliefSection {
    AxisView view; ///< `along` is the axis that the plane lies across
    Direction push = Direction::x();
    Point through = Point::Zero();   ///< before it was pushed
    std::vector<SectionLine> before; ///< figures are 0
    std::vector<SectionLine> after;  ///< figures are depths, mm
};

/// The two planes in which the push is seen best, through the deepest point of the surface. `drawn`
/// is the surface as it was.
std::vector<ReliefSection> relief_sections(const ReshapedSurface& surface,
                                           const TriangleMesh& drawn, const Vehicle& vehicle);

/// Both curves at the same scale in both ways, the surface as it was dashed; below them the depth
/// along the section, enlarged. `name` is the surface's.
Figure section_figure(const ReliefSection& section, const std::string& name);

} // namespace glim
