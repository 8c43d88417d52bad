#pragma once

#include "judgement/session.h"
#include "judgement/tolerance_findings.h"

namespace glim {

/// Builds the vehicle over and over within the study's tolerances and looks how often its checks
/// are met, what decides, which tolerances matter, and what is the worst that they allow.
///
///     const ToleranceFindings found = study_tolerances(session, workers);
///
/// Bodies are moved, never cut anew; each build is looked at from the deciding directions of the
/// field (or all of them, see ToleranceTask). Areas are sampled and taken as they are: a build is
/// called met or not met by them alone, and meshes count as exact. The same seed gives the same
/// builds, whatever the number of threads.
///
/// Where it is stopped once builds have been looked at, what is known by then comes back, marked
/// as partial; before that it throws Stopped. Throws InputError as Session::check does.
ToleranceFindings study_tolerances(const Session& session, const Workers& workers);

} // namespace glim
