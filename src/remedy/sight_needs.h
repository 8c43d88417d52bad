#pragma once

#include "remedy/freed_area.h"
#include "remedy/lamp_eye.h"
#include "remedy/push_axes.h"

#include <optional>

namespace glim {

/// How low a pusher has to stay toward one direction: node by node across its view, and of what of
/// the lit face lies behind. Columns divide the nodes evenly. What lies before only a part of the
/// lit face has to sink for that part alone, so the lit face is divided from behind into rows.
struct PushLine {
    static constexpr std::size_t nodes = 257;
    static constexpr std::size_t columns = 32;
    static constexpr std::size_t rows = 64;

    /// By node, then by row: of the lit face up to that row, from behind.
    using Table = std::vector<double>;

    std::size_t pusher = 0; ///< place in the eye's
    PushAxes axes;
    double u_least = 0;
    double step = 1;
    double w_least = 0;
    double row_depth = 1;
    Table top;  ///< how high the pusher reaches before the lit face
    Table low;  ///< the lowest of the lit face that nothing fixed hides; less spare
    Table from; ///< from what w on something lies before the lit face of just that row

    /// Of the node or column at that place across; may lie outside.
    double place_of(double u) const { return (u - u_least) / step; }
    static std::uint32_t column_of(double place);
    std::size_t row_of(double w) const;
    /// The entry of the lit face that something lies before at that node; none where it lies before
    /// nothing of it.
    std::optional<std::size_t> entry_before(std::size_t node, double w) const;
    static std::size_t entry(std::size_t node, std::size_t row) { return node * rows + row; }
    /// Of the whole lit face.
    static std::size_t entry(std::size_t node) { return entry(node, rows - 1); }
};

/// One lamp toward one direction: how deep a relief has to be for what to be seen.
struct SightNeeds {
    std::vector<LitPiece> pieces;   ///< of what no fixed part hides; columns as the main line's
    double hidden_by_fixed_mm2 = 0; ///< of what faces the eye
    bool seen_from_under = false;   ///< some of the lit face is, from under what can be pushed
    std::vector<PushLine> lines;    ///< one a pusher that can lower anything; the main one first
};

/// `spare`: so far below each line of sight the pushed surfaces have to stay. Pure: the same
/// answer in any thread.
///
/// need = (how high the surfaces above the line of sight reach over it + spare) / (how far they
/// sink in view for each mm pushed): a ridge 3 mm above the ray has to sink 3 mm in view.
SightNeeds sight_needs(const LampEye& eye, const Direction& toward, Length spare);

} // namespace glim
