#include "remedy/cone_tops.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace glim {

namespace {

constexpr double nowhere = -std::numeric_limits<double>::infinity();
/// The plane has a size even where all tops stand in one place; mm.
constexpr double least_extent = 1;

} // namespace

ConeTops::ConeTops(const std::vector<Point>& points, const Direction& push,
                   const std::vector<double>& heights, double slope)
    : plane_(push), slope_(slope), cells_(cells_across * cells_across)
{
    Point2 least = Point2::Constant(-nowhere);
    Point2 most = Point2::Constant(nowhere);
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (heights[i] == nowhere)
            continue;
        least = least.cwiseMin(plane_.project(points[i]));
        most = most.cwiseMax(plane_.project(points[i]));
        highest_ = std::max(highest_, heights[i]);
    }
    if (highest_ == nowhere)
        return;
    for (int level = 0; level <= levels; ++level)
        highest_of_[level].assign(std::size_t{1} << (2 * (levels - level)), nowhere);
    least_ = least;
    cell_ = std::max((most - least).maxCoeff(), least_extent) / (cells_across - 1);
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (heights[i] == nowhere)
            continue;
        const Point2 at = plane_.project(points[i]);
        const auto column = static_cast<long>((at.x() - least_.x()) / cell_);
        const auto row = static_cast<long>((at.y() - least_.y()) / cell_);
        cells_[row * cells_across + column].tops.push_back({at, heights[i]});
        for (int level = 0; level <= levels; ++level) {
            double& highest = highest_of_[level][place({level, column >> level, row >> level})];
            highest = std::max(highest, heights[i]);
        }
    }
}

void ConeTops::look_into(const Cell& cell, const Point2& p, double& best) const
{
    for (const Top& top : cell.tops)
        if (top.height > best)
            best = std::max(best, top.height - slope_ * (top.at - p).norm());
}

double ConeTops::bound(const Block& block, const Point2& p) const
{
    const double side = cell_ * static_cast<double>(1L << block.level);
    const Point2 least =
        least_ + side * Point2(static_cast<double>(block.column), static_cast<double>(block.row));
    const Point2 most = least + Point2::Constant(side);
    const Point2 off = (least - p).cwiseMax(p - most).cwiseMax(Point2::Zero());
    return highest(block) - slope_ * off.norm();
}

// The most promising quarter first, so that the others seldom promise more than was found.
void ConeTops::look_into(const Block& block, const Point2& p, double& best) const
{
    if (block.level == 0) {
        look_into(cells_[block.row * cells_across + block.column], p, best);
        return;
    }
    std::array<std::pair<double, Block>, 4> quarters;
    for (long i = 0; i < 4; ++i) {
        const Block quarter{block.level - 1, 2 * block.column + i % 2, 2 * block.row + i / 2};
        quarters[i] = {bound(quarter, p), quarter};
    }
    std::sort(quarters.begin(), quarters.end(),
              [](const auto& a, const auto& b) { return a.first > b.first; });
    for (const auto& [promise, quarter] : quarters)
        if (promise > best)
            look_into(quarter, p, best);
}

double ConeTops::at(const Point& point, double floor) const
{
    double best = floor;
    if (highest_ != nowhere)
        look_into({levels, 0, 0}, plane_.project(point), best);
    return best > floor ? best : nowhere;
}

} // namespace glim
