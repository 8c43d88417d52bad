#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace glim::bench {

/// One thing measured at one size of body.
struct Figure {
    std::string measure; ///< what, with the number of threads where it matters
    std::string unit;    ///< empty for a ratio
    double value = 0;
    std::string target = {}; ///< what we want at 1M triangles, in words; may be empty
};

struct FiguresOfSize {
    std::size_t triangles = 0; ///< as asked
    std::vector<Figure> figures;
};

/// One row a measure, one column a size. For a terminal the columns stand under each other; as
/// Markdown they are a table.
std::string table_of(const std::vector<FiguresOfSize>& sizes, bool markdown);

/// One row a figure: triangles, measure, unit, value, target.
std::string csv_of(const std::vector<FiguresOfSize>& sizes);

/// Whole numbers whole, others with three significant digits at least: 0.0123, 4.56, 1235.
std::string shown(double value);

} // namespace glim::bench
