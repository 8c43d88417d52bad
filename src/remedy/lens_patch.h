#pragma once

#include "geometry/direction.h"
#include "geometry/edge_uses.h"
#include "geometry/triangle_mesh.h"

#include <optional>
#include <vector>

namespace glim {

/// The outline of a lens, as seen against its face.
struct LensShape {
    std::optional<double> width_to_height; ///< none: round
    /// Of the outline that is `width` wide; of a round one as it is cut, a polygon.
    Area area(Length width) const;
    /// The same the other way round.
    Length width_for(Area area) const;
    /// From end to end, the longest way across.
    Length across(Length width) const;
};

/// Where on a surface a lens is meant to sit, and which way it looks.
struct LensSeat {
    std::uint32_t facet = 0; ///< of the carrier
    Point centre = Point::Zero();
    Direction facing = Direction::x(); ///< the outline is drawn across this
    Vector across = Vector::Zero();    ///< level, unit; the way the width runs
    Vector up = Vector::Zero();
};

/// A lens cut from the surface that carries it.
struct LensPatch {
    TriangleMesh mesh; ///< vehicle frame, wound as the carrier
    Length width;
    /// Of the outline, how much the surface fills: less than `wholly_filled` where it ends or is
    /// creased within the outline.
    double filled = 0;
};

/// From here on an outline counts as filled: cuts round by less.
inline constexpr double wholly_filled = 0.999;

/// A surface from which lenses can be cut. Facets keep their numbers.
class LensCarrier {
public:
    /// `mesh` in the vehicle frame.
    explicit LensCarrier(const TriangleMesh& mesh);

    const TriangleMesh& mesh() const { return mesh_; }

    /// Looking the mean way of what the surface does within `radius` of the facet's centre. Up is
    /// as near to `vehicle_up` as it can be; `level` is what the width runs along where the lens
    /// looks straight up or down.
    LensSeat seat(std::uint32_t facet, Length radius, const Direction& vehicle_up,
                  const Direction& level) const;
    /// What the outline cuts out of the smooth surface about the seat: facets that hang together
    /// over edges with it, with no crease between. Growing widths hold each other.
    LensPatch cut(const LensSeat& seat, const LensShape& shape, Length width) const;

private:
    template <class Take>
    std::vector<std::uint32_t> hanging_together(std::uint32_t from, const Take& take) const;

    TriangleMesh mesh_;
    std::vector<Vector> normals_; ///< unit, one a facet; zero for one without area
    std::vector<std::array<std::uint32_t, 3>> neighbours_; ///< over smooth edges; ~0 for none
};

} // namespace glim
