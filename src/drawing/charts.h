#pragma once

#include "drawing/figure.h"
#include "judgement/blocking_map.h"

namespace glim {

/// The charts of one lamp under one row, in the order in which they are best read: what is in view
/// (or hidden, or left of the light) by direction, the margin, who is in the way, the same about
/// the axis for wide fields, and cuts through the field; and where the proof is due, the light left
/// under its rows. A field that is one line has cuts only; points have nothing, nor has a row that
/// looked in no direction. `verdict` is of `row`, `row` of `check`, `check` of `findings`;
/// `blocking` is the verdict's.
std::vector<Figure> charts_of(const Findings& findings, const CheckFindings& check,
                              const RowFindings& row, const LampVerdict& verdict,
                              const BlockingMap& blocking);

} // namespace glim
