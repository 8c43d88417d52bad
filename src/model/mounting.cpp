#include "model/mounting.h"

#include "units/trig.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr const char* side_remedy =
    "say in `mounting` which lamp was measured: \"left\", \"right\" or \"median\"";

std::string type_words(const Photometry& photometry)
{
    const auto& row = goniometer_words[static_cast<std::size_t>(photometry.grid.goniometer)];
    return "a type " + std::string(row.word) + " file";
}

} // namespace

bool plus_h_is_to_the_right(Side side, ReferenceAxis axis)
{
    switch (axis) {
    case ReferenceAxis::forward:
        return side == Side::right;
    case ReferenceAxis::rearward:
        // To the left of the vehicle is to the right of one who looks to the rear.
        return side != Side::right;
    case ReferenceAxis::outboard:
        break;
    }
    return side == Side::left;
}

Eigen::Matrix3d file_from_lamp(const Mounting& mounting, ReferenceAxis axis)
{
    const double outboard = plus_h_is_to_the_right(mounting.measured_on, axis) ? 1 : -1;
    const Eigen::RowVector3d beam = Eigen::RowVector3d::UnitX();
    const Eigen::RowVector3d lamp_right = outboard * Eigen::RowVector3d::UnitY();
    const Eigen::RowVector3d lamp_up = Eigen::RowVector3d::UnitZ();
    const Eigen::RowVector3d up = cos(mounting.roll) * lamp_up + sin(mounting.roll) * lamp_right;
    const Eigen::RowVector3d right = cos(mounting.roll) * lamp_right - sin(mounting.roll) * lamp_up;
    Eigen::Matrix3d rows;
    switch (mounting.beam) {
    case BeamAxis::h0_v0:
        rows << beam, right, up;
        break;
    case BeamAxis::nadir:
        rows << right, up, -beam;
        break;
    case BeamAxis::c0_horizontal:
        rows << beam, -right, up;
        break;
    }
    return rows;
}

std::optional<Intensity> intensity_toward(const IntensityGrid& grid,
                                          const Eigen::Matrix3d& file_from_lamp,
                                          const Bearing& bearing)
{
    // In the lamp's own components the frame is x, y, z itself.
    const Direction in_lamp = direction_of(bearing, LampFrame{});
    return intensity_toward(grid, Direction::along(file_from_lamp * in_lamp.vector()));
}

bool is_alike_on_both_sides(const IntensityGrid& grid, const Mounting& mounting)
{
    const Eigen::Matrix3d turn = file_from_lamp(mounting, ReferenceAxis::forward);
    const Eigen::Matrix3d mirror = turn * Eigen::Vector3d(1, -1, 1).asDiagonal() * turn.transpose();
    // Bilinear in angles that went through a vector: so little of the peak is rounding.
    const double grain = 1e-9 * in_candelas(peak_of(grid).intensity);
    for (std::size_t h = 0; h < grid.horizontal.size(); ++h)
        for (std::size_t v = 0; v < grid.vertical.size(); ++v) {
            const Vector d = file_vector(grid.goniometer, {grid.horizontal[h], grid.vertical[v]});
            const auto other = intensity_toward(grid, Direction::along(mirror * d));
            if (!other)
                return false;
            // Not the number as filed: at a pole one of several stands for all.
            const double here = in_candelas(*intensity_toward(grid, Direction::along(d)));
            const double there = in_candelas(*other);
            if (std::abs(here - there) > alike_within * std::max(here, there) + grain)
                return false;
        }
    return true;
}

std::optional<MountingTrouble> mounting_trouble(const Photometry& photometry,
                                                const std::optional<Mounting>& mounting)
{
    const bool is_c = photometry.grid.goniometer == Goniometer::c;
    const bool is_alike = photometry.symmetry == FiledSymmetry::vertical_plane;
    if (!mounting && is_c)
        return MountingTrouble{type_words(photometry) + " does not say where the lamp's beam lies",
                               "say in `mounting` whether it is \"nadir\" or \"c0_horizontal\", "
                               "and which lamp was measured"};
    if (!mounting && !is_alike)
        return MountingTrouble{type_words(photometry) + " does not say for which side it is",
                               side_remedy};
    if (!mounting || is_c == (mounting->beam != BeamAxis::h0_v0))
        return std::nullopt;
    return MountingTrouble{type_words(photometry) + " has no beam along \"" +
                               std::string(beam_axis_words[std::size_t(mounting->beam)].key) + "\"",
                           is_c ? "write \"nadir\" or \"c0_horizontal\"" : "write \"h0_v0\""};
}

} // namespace glim
