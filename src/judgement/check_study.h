#pragma once

#include "judgement/findings.h"
#include "machine/workers.h"

namespace glim {

/// Every check of the study. Throws InputError where the study contradicts a rule (a union of lamps
/// whose axes differ), Stopped where it was asked to stop.
///
///     const Study study = read_study("theme-a.toml");
///     const Findings findings = check_study(study);
///     write_results(findings, ...);
Findings check_study(const Study& study, const Workers& workers = {});

} // namespace glim
