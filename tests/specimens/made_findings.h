#pragma once

#include "judgement/findings.h"
#include "report/run_facts.h"

namespace glim::test {

/// Findings written by hand, so that every figure in a report is known beforehand.
///
/// One lamp, "indicator", looked at from three directions, all level:
///
///     H     lens   visible          low      high
///     -45   2000   700.25 exactly   700.24   700.26 (sampled 701)
///     -40   2100   1249             1240     1260
///       0   3000   3000             3000     3000
///
/// One check, "across", of two rows: "inboard" asks 1250 mm2 at -45 and -40 and is not met;
/// "ahead" asks 2200 mm2 at -40 and 0, and calls -40 undecided, which is less bad.
Findings made_findings();

/// What the findings were found in: the nose, a strip of ten facets of 50 mm2, 10 mm apart in z;
/// the badge, one facet. The median plane is y = 0.
Study made_study();

RunFacts made_facts();

} // namespace glim::test
