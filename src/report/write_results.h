#pragma once

#include "judgement/findings.h"
#include "machine/new_folder.h"
#include "report/run_facts.h"

namespace glim {

/// Writes `result.json`, `directions.csv`, `verdicts.csv`, `facets.csv`, `summary.txt` and, where
/// something is in the way of what decided a check, `blocking/<check>.ply`, `.obj` and `.mtl`; and
/// commits: all appear at once or none does. `study` is what `findings` were found in. The folder
/// is opened by the caller before the work begins, so that one that may not be written is refused
/// before anybody waits.
///
///     NewFolder folder("results");
///     write_results(check_study(study), study, facts, folder);
void write_results(const Findings& findings, const Study& study, const RunFacts& facts,
                   NewFolder& folder);

} // namespace glim
