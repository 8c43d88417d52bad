#pragma once

#include "visibility/sweep.h"

namespace glim {

/// Only what is visible and how sure that is: `lens`, `visible`, `low`, `high`, `expected_error`,
/// `rim` and `outline` as seen_toward() has them without a certificate, to the last bit. Who hides
/// what is not asked, which spares rays.
SeenArea visible_toward(const LampView& view, const Direction& toward);

} // namespace glim
