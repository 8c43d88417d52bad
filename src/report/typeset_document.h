#pragma once

#include "report/document.h"

namespace glim {

/// The document in the signs of print: degrees and square millimetres. Columns of code, titles of
/// columns and words for those who cannot see a figure stay as they are, and so do `names` wherever
/// they are told: a file called "12 deg.toml" has to be found by its name.
Document typeset_document(Document document, const std::vector<std::string>& names);

} // namespace glim
