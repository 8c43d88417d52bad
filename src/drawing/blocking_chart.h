#pragma once

#include "drawing/chart_subject.h"
#include "drawing/figure.h"
#include "judgement/blocking_map.h"

namespace glim {

/// Which surface takes most in each direction, told apart by letter, hatch and colour. `blocking`
/// is the subject's verdict's, `names` its surfaces' as results call them. Requires: the field has
/// some width and some height.
Figure blocking_chart(const std::shared_ptr<const ChartSubject>& subject,
                      const LampVerdict& verdict, const BlockingMap& blocking,
                      const std::vector<std::string>& names);

} // namespace glim
