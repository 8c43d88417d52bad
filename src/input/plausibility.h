#pragma once

#include "model/study.h"

namespace glim {

/// What makes one doubt a study: no error, but a question that the user should answer.
/// A body of an odd length; a surface with a twin that is drawn whole; ground that does not lie
/// below everything; a lamp at the wrong end; an axis that is not level. `place` is the study's.
std::vector<Warning> doubts_about(const Study& study, const Place& place);

} // namespace glim
