#pragma once

#include "geometry/bearing.h"
#include "model/lamp.h"
#include "model/photometry.h"

#include <optional>
#include <string>

namespace glim {

/// Which direction of the file lies along the lamp's reference axis, and what then is up while the
/// roll is 0.
enum class BeamAxis {
    h0_v0,        ///< types a and b: H 0, V 0; up is V +90
    nadir,        ///< type c with the lamp hung facing down: gamma 0; up is C 90, right is C 0
    c0_horizontal ///< type c with the lamp upright: C 0, gamma 90; up is gamma 180
};

struct BeamAxisWord {
    BeamAxis axis;
    std::string_view key;   ///< in study files
    std::string_view words; ///< for people
};
inline constexpr std::array beam_axis_words = {
    BeamAxisWord{BeamAxis::h0_v0, "h0_v0", "H 0, V 0"},
    BeamAxisWord{BeamAxis::nadir, "nadir", "gamma 0"},
    BeamAxisWord{BeamAxis::c0_horizontal, "c0_horizontal", "C 0, gamma 90"},
};

/// How the axes of a photometric file lie in the lamp. Nothing of it can be guessed.
struct Mounting {
    BeamAxis beam = BeamAxis::h0_v0;
    /// How far the file's up is turned from the lamp's up, clockwise (to the right) as seen from
    /// the lamp looking out.
    Angle roll;
    /// The lamp that was measured: as seated in the vehicle. For the lamp on the other side the
    /// distribution is mirrored, so that outboard stays outboard.
    Side measured_on = Side::left;
};

/// Whether +H of the lamp's own frame (outboard; see geometry/bearing.h) lies to the right as seen
/// from the lamp looking out along its axis. On an axis that points outboard +H is to the front; on
/// a median lamp it is to the left of the vehicle.
bool plus_h_is_to_the_right(Side side, ReferenceAxis axis);

/// The file's axes by the lamp's: multiplied by the components (forward, outboard, up) of a
/// direction in a lamp's frame it gives those in the file's axes. The same matrix serves the lamp
/// that was measured and its mirror image, because both count outboard alike.
Eigen::Matrix3d file_from_lamp(const Mounting& mounting, ReferenceAxis axis);

/// Nothing outside the measured range.
std::optional<Intensity> intensity_toward(const IntensityGrid& grid,
                                          const Eigen::Matrix3d& file_from_lamp,
                                          const Bearing& bearing);

/// Mirror images that differ by no more than this share of the brighter one count as alike: what a
/// repeated measurement may differ by.
inline constexpr double alike_within = 0.01;

/// Whether the lamp's right and left sides, as seen from the lamp looking out, have the same
/// intensities: then it makes no difference which lamp was measured. Every number of the file is
/// compared with its mirror image; one that was not measured is not alike.
bool is_alike_on_both_sides(const IntensityGrid& grid, const Mounting& mounting);

/// What keeps a file from being used with a mounting, or without one, and what to do about it.
struct MountingTrouble {
    std::string what;
    std::string remedy;
};
/// A type c file needs to be told where its beam lies, and every file that is not alike on both
/// sides which side was measured; the beam must be one that the file's type has.
std::optional<MountingTrouble> mounting_trouble(const Photometry& photometry,
                                                const std::optional<Mounting>& mounting);

} // namespace glim
