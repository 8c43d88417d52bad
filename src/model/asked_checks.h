#pragma once

#include "model/study.h"

namespace glim {

/// The checks that somebody named, or all where none is named: places in Study::checks.
std::vector<std::size_t> asked_checks(const Study& study,
                                      const std::vector<std::size_t>& named = {});

} // namespace glim
