#pragma once

#include "visibility/prepared_scene.h"

namespace glim::shapes {

/// The visible area of a lamp, written straight from its definition (docs/accuracy.md) and by
/// nothing of visibility/ but the rule of the skip: for every lit facet that faces the eye, its
/// projection less that of all that lies in front of its plane by more than the skip. Polygons by
/// CGAL, in exact arithmetic. Slow, for small scenes.
class ExactDefinition {
public:
    ExactDefinition(const Study& study, const LampStanding& lamp);

    Area visible(const Direction& toward) const { return left_by(all_, toward); }
    /// Hidden only by the lamp itself and by what was approved with it.
    Area approved(const Direction& toward) const { return left_by(approved_, toward); }

private:
    using Triangle = std::array<Point, 3>;

    Area left_by(const std::vector<Triangle>& obstacles, const Direction& toward) const;

    std::vector<Triangle> lit_; ///< about the lamp's middle, as are the others
    std::vector<Triangle> all_;
    std::vector<Triangle> approved_;
    Length touch_;
};

} // namespace glim::shapes
