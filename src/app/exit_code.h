#pragma once

#include "judgement/findings.h"

namespace glim {

/// How the program ends; the help page and the manual say the same.
enum class ExitCode {
    met = 0,
    not_met = 1,
    bad_input = 2,
    failure = 3, ///< ours or the machine's
    open = 4,    ///< nothing fails, but something is not known to be met
    stopped = 130,
};

/// The worst check decides. One that does not apply to its lamps was not answered: open.
ExitCode exit_code_of(const Findings& findings);

} // namespace glim
