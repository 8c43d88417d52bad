#pragma once

#include "judgement/findings.h"

namespace glim::shapes {

LeastIntensity at_least_cd(double cd);

/// The study's first lamp, asked for one row over H and V in degrees.
Findings asked(Study study, Criterion criterion, double h0, double h1, double v0 = 0,
               double v1 = 0);

/// Of the first check, and of its row's first lamp.
const CheckFindings& answer(const Findings& findings);
const LampVerdict& verdict(const Findings& findings, std::size_t row = 0);

/// Requires: there is one.
double cd(const std::optional<Intensity>& intensity);

} // namespace glim::shapes
