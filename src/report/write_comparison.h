#pragma once

#include "machine/new_folder.h"
#include "report/comparison_document.h"

namespace glim {

/// Writes comparison.html and comparison.pdf, comparison.json, comparison.csv and comparison.txt,
/// and puts the folder in its place. `names` are what the user named, as RunFacts has them.
void write_comparison(const Comparison& comparison, const ComparedPictures& pictures,
                      const std::vector<std::string>& names, NewFolder& folder);

} // namespace glim
