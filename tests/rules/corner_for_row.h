#pragma once

#include "model/study.h"

namespace glim::shapes {

/// A study that asks one row of one lamp, made so that all its conditions hold: function, category,
/// width, load. The lamp is a plate of 200 x 100 mm that faces the middle of the row's field, on
/// the left, 800 mm above the ground, with nothing in the way: it should meet any row of
/// signalling. Where the row asks for light, the lamp has a photometric file that gives enough, or
/// not too much, in every direction.
Study corner_that_meets(const RuleTable& table, const RuleRow& row);

/// The same corner, spoilt in just what the row asks about: a wall, a height, a distance, an axis.
Study corner_that_fails(const RuleTable& table, const RuleRow& row);

} // namespace glim::shapes
