#pragma once

#include "drawing/blocking_mesh.h"
#include "drawing/sight_line.h"
#include "visibility/picture_frame.h"

namespace glim {

struct PixelSize {
    std::uint32_t width, height;
};

/// What a picture of a corner has to show.
struct CornerSubject {
    const LampLook& look;
    std::vector<TriangleMesh> lit; ///< vehicle frame, one a lamp
    std::vector<BlockingSurface> blocking;
    std::optional<SightLine> line;
};

/// A three-quarter view, from before the lamp's end of the vehicle: from whichever side shows most
/// of both the lit face and of what hides it, wide enough to show the corner around them.
/// `caster` has all bodies of the picture.
PictureFrame corner_frame(const CornerSubject& subject, const Vehicle& vehicle,
                          const Caster& caster, const Point& origin, const PixelSize& size);

} // namespace glim
