#pragma once

#include "judgement/findings.h"

#include <string>
#include <vector>

namespace glim {

// What is in the way of one lamp under one row. Require that the row applies to the lamp.

/// The surfaces that take enough to be told, at most eight, in their order; none where nothing is
/// hidden that counts.
std::vector<const Blocker*> told_blockers(const LampVerdict& verdict, const LampLook& look);

/// "x 210..260, y 655..699, z 640..702 mm", rounded outward.
std::string box_words(const Box& box);

/// A small table of the surfaces in the way, aligned; empty if there are none.
std::vector<std::string> blocker_table(const LampVerdict& verdict, const LampLook& look);

/// Where the first surface of that table is to be looked at; empty if the table is.
/// "patch of nose (far side): x 210..260, y 655..699, z 640..702 mm", rounded outward.
std::string patch_words(const LampVerdict& verdict, const LampLook& look);

} // namespace glim
