#pragma once

#include "drawing/figure.h"
#include "judgement/surface_margins.h"

namespace glim {

/// For each surface and way of a check, how far it may go either way before the check fails, or
/// where it has to go for the check to be met: bars about where it is drawn. Several figures where
/// there are many surfaces. 400 points wide.
std::vector<Figure> margin_charts(const CheckMargins& check, const MarginFindings& found,
                                  const Study& study);

} // namespace glim
