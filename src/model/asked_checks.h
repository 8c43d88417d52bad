#pragma once

#include "model/study.h"

namespace glim {

/// The checks that somebody named, or all where none is named: places in Study::checks.
std::vector<std::size_t> asked_checks(const Study& study,
                                      const std::vector<std::size_t>& named = {});

/// The rows that these checks stand on, each once, check by check in the order of their rules.
/// Pointers into the study's tables.
std::vector<const RuleRow*> asked_rows(const Study& study, const std::vector<std::size_t>& checks);

} // namespace glim
