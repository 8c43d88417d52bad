#pragma once

#include "geometry/direction.h"
#include "geometry/placement.h"
#include "input/table_reader.h"

#include <optional>

namespace glim {

/// Two axes of a frame, perpendicular; left is up x forward.
struct FrameAxes {
    Direction forward = Direction::x();
    Direction up = Direction::z();
    std::string forward_word; ///< as written: "-x"
    std::string up_word;

    /// The columns forward, left, up.
    Eigen::Matrix3d columns() const;
};

/// Reads the keys `forward` and `up`: "+x", "-x", "+y", "-y", "+z" or "-z", both required, along
/// different axes. Nothing after a complaint.
std::optional<FrameAxes> read_axes(TableReader& table);

} // namespace glim
