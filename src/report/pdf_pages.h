#pragma once

#include "machine/workers.h"
#include "report/document.h"

namespace glim {

/// The document as a PDF for A4: running head, page numbers, a bookmark for every heading, fonts
/// embedded, charts as lines. The same document gives the same bytes, with the same fonts.
/// `progress` is told of every page.
std::string pdf_pages(const Document& document, const Progress& progress = {});

} // namespace glim
