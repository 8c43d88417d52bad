#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace glim {

/// How text for people is laid out.
struct TextStyle {
    int columns = 100;   ///< no line is longer, unless one word is
    bool colour = false; ///< escape sequences of a terminal; words never depend on them
};

/// Names come from files of all sorts: whatever could steer a terminal becomes "?". A line break
/// becomes a blank.
std::string harmless(std::string_view text);

/// How many characters of UTF-8; each counts as one column.
int width_of(std::string_view text);

/// Made harmless and broken at blanks into lines of at most `columns` characters; the second line
/// and those after it begin with `hanging` blanks, which count. A longer word has a line of its
/// own.
std::string wrapped(std::string_view text, int columns, int hanging = 0);

/// One entry of a list with labels.
struct Labelled {
    std::string label; ///< may be empty: goes on under the label above
    std::string text;
    bool laid_out = false; ///< one line whose blanks count; wrapped only if it is too long
};

/// Labels in a column, their texts wrapped beside them; every line begins with `indent` blanks and
/// ends with a line feed.
///
///     lamp          indicator, left
///     least in view 712 mm2, 538 mm2 short of
///                   the 1250 mm2 needed
std::string labelled_block(const std::vector<Labelled>& entries, int indent,
                           const TextStyle& style);

/// Cells made harmless and put under each other, two blanks between columns; figures in the columns
/// named by `right_aligned` end under each other. Trailing blanks are dropped. Rows may be of
/// unequal length.
std::vector<std::string> aligned_rows(const std::vector<std::vector<std::string>>& cells,
                                      const std::vector<std::size_t>& right_aligned = {});

} // namespace glim
