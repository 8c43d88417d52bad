#pragma once

#include "model/intensity_grid.h"

namespace glim {

/// The luminous flux within the measured range, integrated by the grid's own type: dw = cosV dH dV
/// for a, cosH dH dV for b, sin(gamma) dC dgamma for c.
///
/// Between two neighbouring points the intensity is taken along the flatter of the two parabolas
/// through them and a third, so that the edge of a half-space does no harm, and its product with
/// the type's cosine or sine is integrated. A uniform source and a Lambertian one on a grid of 5
/// degrees come out within 0.1 %.
LuminousFlux flux_of(const IntensityGrid& grid);

} // namespace glim
