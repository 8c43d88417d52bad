#pragma once

#include "drawing/chart_subject.h"
#include "drawing/figure.h"

namespace glim {

// Maps of a field's directions. All require that the field has some width and some height.

/// What is in view, or hidden, in every direction: longitude by latitude.
Figure value_map(const std::shared_ptr<const ChartSubject>& subject);

/// The same about the axis, for wide fields.
Figure polar_value_map(const std::shared_ptr<const ChartSubject>& subject);

/// How much more than asked, or less.
Figure margin_map(const std::shared_ptr<const ChartSubject>& subject);

} // namespace glim
