#pragma once

#include "drawing/chart_subject.h"
#include "judgement/findings.h"

namespace glim::test {

/// A lens of 60 x 40 mm behind a knife edge, opaque for y > 50 at 40 ahead, asked for 1250 mm2 in
/// this field: at V = 0 they end at 42.9852 degrees outboard.
Findings behind_knife_edge(const Field& field, Criterion criterion);
Findings behind_knife_edge(const Field& field);

/// Where on that latitude 1250 mm2 end: 40 cosV (80 cosH - 40 sinH) = 1250, H between 18 and 63.
double knife_edge_h_deg(double v_deg);

/// Of the first lamp under the first row of the first check.
std::shared_ptr<const ChartSubject> subject_of(const Findings& findings);

} // namespace glim::test
