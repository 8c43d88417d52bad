#pragma once

#include "report/document.h"
#include "report/page_flow.h"

namespace glim {

/// How much room the pieces of a page have, in points.
struct PageRoom {
    double width = 0, height = 0;
};

/// The blocks as pieces for pages: text wrapped, rows of tables with their head to be repeated,
/// figures scaled down where they are too large, headings kept with what follows. No piece is
/// higher than the room. The document must outlive them.
std::vector<Piece> page_pieces(const Document& document, const PageRoom& room);

} // namespace glim
