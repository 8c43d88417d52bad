#include "input/axis_words.h"

namespace glim {

namespace {

struct AxisRow {
    std::string_view word;
    int axis;
    int sign;
};
constexpr std::array axis_rows = {
    AxisRow{"+x", 0, 1},  AxisRow{"-x", 0, -1}, AxisRow{"+y", 1, 1},
    AxisRow{"-y", 1, -1}, AxisRow{"+z", 2, 1},  AxisRow{"-z", 2, -1},
};

Direction direction_of(const AxisRow& row)
{
    return Direction::along(row.sign * Vector::Unit(row.axis));
}

} // namespace

Eigen::Matrix3d FrameAxes::columns() const
{
    Eigen::Matrix3d m;
    m << forward.vector(), up.vector().cross(forward.vector()), up.vector();
    return m;
}

std::optional<FrameAxes> read_axes(TableReader& table)
{
    const std::string usage =
        " is never guessed; write \"+x\", \"-x\", \"+y\", \"-y\", \"+z\" or \"-z\"";
    const bool has_forward = table.demand("forward", "which way is forward" + usage);
    const bool has_up = table.demand("up", "which way is up" + usage);
    const AxisRow* forward = table.row_of("forward", axis_rows, &AxisRow::word);
    const AxisRow* up = table.row_of("up", axis_rows, &AxisRow::word);
    if (!has_forward || !has_up || !forward || !up)
        return std::nullopt;
    if (forward->axis == up->axis) {
        table.complain("up", "`up` and `forward` of " + table.words() + " lie along the same axis",
                       "name two different axes");
        return std::nullopt;
    }
    return FrameAxes{direction_of(*forward), direction_of(*up), std::string(forward->word),
                     std::string(up->word)};
}

} // namespace glim
