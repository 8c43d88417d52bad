#pragma once

#include "generator/lift.h"
#include "generator/skin.h"

namespace glim::demo {

/// How the skin is parted. Values of u and v; see `body_surface`.
namespace cut_at {
inline constexpr double catwalk_u = 5.45;   ///< shut line between nose or bonnet and wing
inline constexpr double arch_front_u = 9.9; ///< shut line between bumper and wing
inline constexpr double bumper_v = 4.75;    ///< shut line on the ledge below the grille
inline constexpr double bonnet_v = 9.55;    ///< shut line ahead of the bonnet
} // namespace cut_at

/// The openings as seen from the front (w, z); of the grille's and the bumper's, which reach across
/// the median plane, the left half, from the plane's lower point round to the upper one.
Outline grille_outline();
Outline intake_outline();
Outline lamp_outline();

/// The rounding of the lamp's opening, mm: anything in the opening stays within
/// `drawn_in(lamp_outline(), lamp_rounding)`.
inline constexpr double lamp_rounding = 4;

/// Each panel ends in a rolled edge along shut lines, openings and free edges.
TriangleMesh bonnet_panel(const Skin& skin);
TriangleMesh nose_panel(const Skin& skin);
TriangleMesh bumper_panel(const Skin& skin);
TriangleMesh wing_panel(const Skin& skin);

/// From the chart of the skin (u, v), and from a chart as seen from the front (w, z).
Lift from_skin(const Skin& skin);
Lift from_front(const Skin& skin, const Point2& guess);
/// From a chart as seen from the left (x, z).
Lift from_side(const Skin& skin, const Point2& guess);

} // namespace glim::demo
