#pragma once

#include "report/document.h"
#include "report/page_pieces.h"

namespace glim {

/// A table over all of the width: its caption, its head, a piece a row; every row carries the head
/// with it to a page that it begins. A row too high for a page goes on in another one.
std::vector<Piece> table_pieces(const Table& table, const PageRoom& room);

} // namespace glim
