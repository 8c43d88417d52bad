#pragma once

#include "report/document.h"

namespace glim {

/// The document in the signs of print: degrees and square millimetres. Columns of code, titles of
/// columns and words for those who cannot see a figure stay as they are.
Document typeset_document(Document document);

} // namespace glim
