#pragma once

#include "judgement/findings.h"

#include <string>

namespace glim {

/// `verdicts.csv`: a row per check, row of the rule and lamp; lamps that answer together follow the
/// single ones. Figures are empty where the row does not apply; solid angles also where its field
/// is a line or a point.
std::string verdicts_csv(const Findings& findings);

} // namespace glim
