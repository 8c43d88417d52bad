#pragma once

#include "machine/workers.h"
#include "report/document.h"

namespace glim {

/// The document as one HTML file that needs nothing else: no script, no request, pictures within
/// it. Headings have a list of contents, tables have headers, pictures have their words; it prints
/// on A4. The same document gives the same bytes. `progress` is told of every figure.
std::string html_page(const Document& document, const Progress& progress = {});

} // namespace glim
