#pragma once

#include "remedy/freed_area.h"
#include "remedy/lamp_eye.h"
#include "remedy/push_axes.h"

namespace glim {

/// How low a pusher has to stay toward one direction, node by node across its view, and what of the
/// lit face is behind there. Columns divide the nodes evenly.
struct PushLine {
    static constexpr std::size_t nodes = 257;
    static constexpr std::size_t columns = 32;

    std::size_t pusher = 0; ///< place in the eye's
    PushAxes axes;
    double u_least = 0;
    double step = 1;
    std::vector<double> top;   ///< how high the pusher reaches before the lit face
    std::vector<double> low;   ///< the lowest of the lit face that nothing fixed hides; less spare
    std::vector<double> depth; ///< w of the lit face's furthest from the eye there

    /// Of the node or column at that place across; may lie outside.
    double place_of(double u) const { return (u - u_least) / step; }
    static std::uint32_t column_of(double place);
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
