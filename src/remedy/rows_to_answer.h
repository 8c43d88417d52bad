#pragma once

#include "judgement/findings.h"

#include <optional>

namespace glim {

/// What a check asks of a lamp of its own, before anybody knows where that lamp stands.
struct RowsToAnswer {
    std::vector<const RuleRow*> in_directions; ///< areas and obstacles
    std::vector<const RuleRow*> of_light;      ///< cannot be told without photometric data
    /// Where a lamp may stand: of the whole table, not of the check's rule alone.
    std::vector<const RuleRow*> of_place;
    bool speaks_of_lamp = false; ///< else no such lamp can answer the check
};

/// Rows below rules that depend on other lamps, and below ways that the maker did not choose, are
/// left out; where a rule is met by any of several, its first part stands for all. `lamp` is one
/// that is yet to be placed: conditions on its height count as holding.
RowsToAnswer rows_to_answer(const Study& study, const Check& check, const Lamp& lamp);

} // namespace glim
