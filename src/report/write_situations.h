#pragma once

#include "drawing/figure.h"
#include "judgement/situations.h"
#include "machine/new_folder.h"

namespace glim {

/// Writes states.html, .pdf, .json, .csv and .txt into the folder and commits it.
void write_situations(const SituationFindings& found, const Study& study, std::vector<Figure> views,
                      const std::string& command, NewFolder& folder);

} // namespace glim
