#include "remedy/freed_area.h"

#include <algorithm>

namespace glim {

namespace {

/// So much of all area may be wanting through the rounding of sums.
constexpr double area_grain = 1e-9;
/// Halvings of the range of depths: to a part in 10^12 of it.
constexpr int halvings = 40;

} // namespace

double share_freed(const LitPiece& piece, double depth_mm)
{
    std::array<double, 3> n = piece.need;
    std::sort(n.begin(), n.end());
    if (depth_mm >= n[2])
        return 1;
    if (depth_mm <= n[0])
        return 0;
    const auto squared = [](double x) { return x * x; };
    if (depth_mm < n[1])
        return squared(depth_mm - n[0]) / ((n[1] - n[0]) * (n[2] - n[0]));
    return 1 - squared(n[2] - depth_mm) / ((n[2] - n[1]) * (n[2] - n[0]));
}

double area_freed(std::span<const LitPiece> pieces, double depth_mm)
{
    double area = 0;
    for (const LitPiece& piece : pieces)
        area += piece.area_mm2 * share_freed(piece, depth_mm);
    return area;
}

std::optional<double> depth_that_frees(std::span<const LitPiece> pieces, double needed_mm2)
{
    double all = 0;
    double deepest = 0;
    std::vector<LitPiece> open; // pieces that some depth frees, and that are not seen yet
    double seen = 0;
    for (const LitPiece& piece : pieces) {
        const auto [least, most] = std::minmax_element(piece.need.begin(), piece.need.end());
        all += piece.area_mm2;
        if (*most <= 0)
            seen += piece.area_mm2;
        else if (*least < no_depth)
            open.push_back(piece);
        for (const double need : piece.need)
            if (need < no_depth)
                deepest = std::max(deepest, need);
    }
    const double wanting = needed_mm2 - seen - area_grain * all;
    if (wanting <= area_freed(open, 0))
        return 0;
    if (wanting > area_freed(open, deepest))
        return std::nullopt;
    double least = 0;
    for (int i = 0; i < halvings; ++i) {
        const double middle = (least + deepest) / 2;
        (area_freed(open, middle) >= wanting ? deepest : least) = middle;
    }
    return deepest;
}

} // namespace glim
