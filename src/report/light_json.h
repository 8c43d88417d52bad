#pragma once

#include "judgement/findings.h"
#include "report/json.h"

namespace glim {

/// A look's light over all its directions, or null: files, what the shares stand on, lists
/// `whole_cd` and `left_cd` in the order of the directions, null where nothing is measured.
Json look_light_json(const LampLook& look);

/// The figures of a row of light, or null.
Json verdict_light_json(const LampVerdict& verdict);

/// What the visible part would give, or null where no proof is due or there is no file.
Json estimate_json(const LampVerdict& verdict);

} // namespace glim
