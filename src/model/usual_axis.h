#pragma once

#include "model/lamp.h"

namespace glim {

/// The axis that lamps of this function are mostly judged from: rearward for those that signal to
/// the rear, outboard for those on the flank, else forward. For looking at a lamp where no rule
/// says it.
ReferenceAxis usual_axis(LampFunction function);

} // namespace glim
