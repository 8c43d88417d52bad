#include "remedy/cone_tops.h"

#include <algorithm>
#include <cmath>

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
    least_ = least;
    cell_ = std::max((most - least).maxCoeff(), least_extent) / (cells_across - 1);
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (heights[i] == nowhere)
            continue;
        const Point2 at = plane_.project(points[i]);
        const auto column = static_cast<long>((at.x() - least_.x()) / cell_);
        const auto row = static_cast<long>((at.y() - least_.y()) / cell_);
        Cell& cell = cells_[row * cells_across + column];
        cell.tops.push_back({at, heights[i]});
        cell.highest = std::max(cell.highest, heights[i]);
    }
}

void ConeTops::look_into(long column, long row, const Point2& p, double& best) const
{
    if (column < 0 || row < 0 || column >= cells_across || row >= cells_across)
        return;
    const Cell& cell = cells_[row * cells_across + column];
    if (cell.highest <= best)
        return;
    for (const Top& top : cell.tops)
        if (top.height > best)
            best = std::max(best, top.height - slope_ * (top.at - p).norm());
}

// Cells in rings around the point, until no cone from further away can be higher.
double ConeTops::at(const Point& point, double floor) const
{
    if (highest_ == nowhere)
        return nowhere;
    const Point2 p = plane_.project(point);
    const auto column = static_cast<long>(std::floor((p.x() - least_.x()) / cell_));
    const auto row = static_cast<long>(std::floor((p.y() - least_.y()) / cell_));
    const long outside =
        std::max({0L, -column, -row, column - cells_across + 1, row - cells_across + 1});
    double best = floor;
    for (long ring = outside; ring < outside + 2 * cells_across; ++ring) {
        if (highest_ - slope_ * cell_ * static_cast<double>(ring - 1) <= best)
            break;
        for (long i = -ring; i <= ring; ++i) {
            look_into(column + i, row - ring, p, best);
            if (ring > 0)
                look_into(column + i, row + ring, p, best);
            if (std::abs(i) < ring) {
                look_into(column - ring, row + i, p, best);
                look_into(column + ring, row + i, p, best);
            }
        }
    }
    return best > floor ? best : nowhere;
}

} // namespace glim
