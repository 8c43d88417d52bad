#pragma once

#include "drawing/canvas.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace glim {

/// Something that stands on one page whole: some lines, a row of a table, a figure.
struct Piece {
    double above = 0; ///< left free before it, but not at the top of a page
    double height = 0;
    /// Draws it with its top left corner there.
    std::function<void(Canvas&, const Point2&)> draw = {};
    bool keep_with_next = false;
    bool begins_page = false;
    /// Stands before it where it is the first of a page: the head of its table.
    std::shared_ptr<const Piece> repeated = {};
    int bookmark_level = 0; ///< 0: no bookmark
    std::string bookmark = {};
};

struct PlacedPiece {
    const Piece* piece = nullptr;
    double y = 0; ///< from the top of the page's room
};

using PagePieces = std::vector<PlacedPiece>;

/// Fills pages of this height from top to bottom, in order. Pieces that are to be kept together
/// move to the next page together, unless they would not fit there either. A piece that is higher
/// than a page runs over its end. The result points into `pieces`.
std::vector<PagePieces> flowed(const std::vector<Piece>& pieces, double height);

} // namespace glim
