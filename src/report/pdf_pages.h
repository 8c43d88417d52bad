#pragma once

#include "machine/workers.h"
#include "report/document.h"

namespace glim {

/// The document as a PDF for A4, upright or, of a sheet, across: running head, page numbers, a
/// bookmark for every heading, fonts embedded, charts as lines. The same document gives the same
/// bytes, with the same fonts. A sheet is scaled down to one page, to `least_sheet_scale` at the
/// least. `progress` is told of every page.
std::string pdf_pages(const Document& document, const Progress& progress = {});

/// Smaller than this nobody reads it on a wall: what does not fit then goes on further pages.
inline constexpr double least_sheet_scale = 0.6;

} // namespace glim
