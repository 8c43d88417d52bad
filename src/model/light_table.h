#pragma once

#include "geometry/field.h"

#include <optional>
#include <string>
#include <vector>

namespace glim {

/// So much light in one direction, which is counted as in Bearing: H outboard-positive, whichever
/// letter the published table has. (L and R of a table are as seen from the lamp looking outward
/// along its axis: of a front lamp on the left L is outboard, of a rear lamp on the left inboard.)
struct LightPoint {
    Bearing toward;
    Intensity least;
    friend bool operator==(const LightPoint&, const LightPoint&) = default;
};

/// Points whose intensities are added: the sum reaches `total`, and each point alone its `floor`.
struct LightGroup {
    std::string name;
    Intensity total;
    std::vector<LightPoint> points;
};

/// So much light in single directions, of which the row's field consists. Needs photometric data.
struct LightTable {
    std::vector<LightPoint> points = {}; ///< that stand for themselves
    std::vector<LightGroup> groups = {};
    double floor = 1; ///< share of its own least that each point of a group needs; 0.6 is 60 %
    std::optional<Intensity> axis = {}; ///< the intensity of which `points` were given as percent
    /// The row of the same table whose gap gives a multiplier for all of it; empty: none.
    std::string multiplied_by = {};
};

/// Every direction of the table, in the order of its text; each once.
std::vector<Bearing> directions_of(const LightTable& table);

/// The directions as a field of single points.
Field field_of(const LightTable& table);

/// What the lamp needs toward this direction by itself, floors included; nothing if the table does
/// not name it.
std::optional<Intensity> least_toward(const LightTable& table, const Bearing& toward);

} // namespace glim
