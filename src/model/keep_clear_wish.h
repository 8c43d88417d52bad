#pragma once

#include "geometry/direction.h"
#include "geometry/triangle_mesh.h"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace glim {

/// Which part of a lamp is kept in view where a rule asks for less than all of it.
enum class FavouredEdge {
    upper,        ///< what lies highest
    lower,        ///< what lies lowest
    inner,        ///< what lies nearest to the median plane, across the reference axis
    outer,        ///< what lies farthest from it
    least_volume, ///< the one of these four whose space is smallest
};
struct FavouredEdgeWord {
    FavouredEdge edge;
    std::string_view key;
    std::string_view words; ///< for people
};
inline constexpr std::array favoured_edge_words = {
    FavouredEdgeWord{FavouredEdge::upper, "upper", "the upper part"},
    FavouredEdgeWord{FavouredEdge::lower, "lower", "the lower part"},
    FavouredEdgeWord{FavouredEdge::inner, "inner", "the inner part"},
    FavouredEdgeWord{FavouredEdge::outer, "outer", "the outer part"},
    FavouredEdgeWord{FavouredEdge::least_volume, "least-volume", "the part of least volume"},
};

/// An upright plane at which a space ends. The space lies on the side away from `normal`.
struct ReachPlane {
    Point on = Point::Zero();
    Direction normal = Direction::x();
};

/// What space lamps need: [keep_clear] of a study.
struct KeepClearWish {
    std::vector<std::size_t> checks = {}; ///< places in Study::checks; empty: all
    /// How far the space reaches. One of the two; none: a box around all that could stand in the
    /// way. Vehicle frame.
    std::optional<Box> box = {};
    std::optional<ReachPlane> plane = {};
    /// No point of the mesh lies further from the space that it stands for.
    Length chord_error = millimetres(2);
    FavouredEdge favour = FavouredEdge::least_volume;
    /// Rows of area: the part kept in view is chosen anew every so many degrees.
    Angle part_step = degrees(5);
};

} // namespace glim
