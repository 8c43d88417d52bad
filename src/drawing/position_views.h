#pragma once

#include "drawing/figure.h"
#include "judgement/situations.h"

#include <vector>

namespace glim {

/// What an eye on the reference axis sees of each lamp that the checks ask, with each moved part in
/// each of its positions; mirror images are left out. Throws Stopped.
std::vector<Figure> position_views(const Study& study, const Workers& workers);

} // namespace glim
