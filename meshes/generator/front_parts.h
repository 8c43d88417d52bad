#pragma once

#include "generator/obj_file.h"
#include "generator/skin.h"

namespace glim::demo {

/// Bars that follow the nose, and the dark screen behind them.
std::vector<Part> grille_parts(const Skin& skin);

/// The dark screen behind the bumper's intake.
Part intake_screen(const Skin& skin);

/// The number plate and its holder, drawn whole across the median plane.
std::vector<Part> plate_parts();

/// A load tray folded up ahead of the front, drawn whole across the median plane; it folds about
/// the line along y at x = -905, z = 420.
Part load_tray();

/// The cap over the tow eye: on the left side only.
Part tow_eye_cover(const Skin& skin);

} // namespace glim::demo
