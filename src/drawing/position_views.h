#pragma once

#include "drawing/figure.h"
#include "judgement/situations.h"

#include <vector>

namespace glim {

/// What an eye on the reference axis sees with each moved part in each of its positions: of the
/// lamps whose rows of moved parts were judged there, else of those that the checks ask. Mirror
/// images are left out. Throws Stopped.
std::vector<Figure> position_views(const SituationFindings& found, const Study& study,
                                   const Workers& workers);

} // namespace glim
