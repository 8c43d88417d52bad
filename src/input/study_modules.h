#pragma once

#include "input/table_reader.h"
#include "model/lamp_unit.h"

namespace glim {

/// What is fitted as one: [[module]] of a study.
struct Module {
    std::string name;
    MovingBodies bodies; ///< those of the modules in it included
    int level = 1;       ///< 1, or one more than the highest of the modules in it
};

/// Reads every [[module]]. A module may hold others, in any order, but not itself. Requires: the
/// study's surfaces and lamps were read.
std::vector<Module> read_modules(TableReader& top, const Study& study);

} // namespace glim
