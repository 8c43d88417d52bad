#pragma once

#include "drawing/chart_subject.h"
#include "drawing/figure.h"

namespace glim {

/// Cuts through a field: the area, or what is hidden, along one line of its grid, with the
/// threshold and with how far the figure may be off. Along H at V = 0, or as near to it as the
/// field has directions, and where the worst direction stands; along V at the worst direction's H.
/// Each once, and none where the field has no two neighbours on the line.
std::vector<Figure> profile_charts(const std::shared_ptr<const ChartSubject>& subject,
                                   const LampLook& look);

} // namespace glim
