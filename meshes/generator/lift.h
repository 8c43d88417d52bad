#pragma once

#include "generator/chart_mesh.h"
#include "geometry/triangle_mesh.h"

#include <optional>

namespace glim::demo {

/// Where a point of a chart lies in space, and which way is outward there.
struct Lifted {
    Point at;
    Vector outward; ///< unit
};
/// Every chart here is drawn as seen from *inside* the body (u or w to the left, height upward), so
/// lifting turns the winding round to face outward.
using Lift = std::function<Lifted(const Point2&)>;

/// A lift set deeper into the body by `depth` mm, measured along the normal.
Lift sunk(Lift lift, double depth);

TriangleMesh lifted(const ChartMesh& chart, const Lift& lift);

/// A rolled edge: a quarter round away from the surface, then straight down.
struct Hem {
    double radius; ///< mm; 0 gives a sharp edge
    double depth;  ///< mm below the rounding
};
/// The hems along the border of a lifted chart. An edge without a hem (nullopt for its middle)
/// stays bare; where two hems meet, the corner takes their mean. Along one unbroken line all hems
/// are rounded, or none is. The round takes `radius` beyond the chart's border.
TriangleMesh hemmed(const ChartMesh& chart, const Lift& lift,
                    const std::function<std::optional<Hem>(const Point2& middle)>& hem);

} // namespace glim::demo
