#pragma once

#include "geometry/direction.h"
#include "geometry/triangle_mesh.h"
#include "units/units.h"

#include <span>

namespace glim::bench {

/// What a picture on a square grid would say: the lit surface drawn toward one direction with a
/// depth a pixel, then everything else before it. The plain way to do this work without rays, to
/// compare with.
class ZBuffer {
public:
    ZBuffer(const TriangleMesh& lit, std::span<const TriangleMesh> others, Length pixel);

    /// The lit pixels that nothing covers, times the area of one.
    Area visible_toward(const Direction& toward) const;

private:
    const TriangleMesh& lit_;
    std::span<const TriangleMesh> others_;
    double pixel_mm_;
};

} // namespace glim::bench
