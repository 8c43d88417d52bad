#pragma once

#include "generator/outline.h"
#include "geometry/vector.h"

#include <array>
#include <cstdint>
#include <functional>
#include <map>
#include <utility>
#include <vector>

namespace glim::demo {

/// Four places in `ChartMesh::points`, counter-clockwise; two neighbours may be one.
using Quad = std::array<std::uint32_t, 4>;

/// A piece of surface cut into quads in a plane chart.
class ChartMesh {
public:
    /// The number of the point, new only if there is none at the same place.
    std::uint32_t point(const Point2& p);
    void add(const Quad& quad) { quads_.push_back(quad); }

    const std::vector<Point2>& points() const { return points_; }
    const std::vector<Quad>& quads() const { return quads_; }

    /// Edges that one quad has alone, chained; the mesh lies to the left of each. Edges that
    /// `skipped` names by their middle are left out and break a chain.
    struct Chain {
        std::vector<std::uint32_t> points;
        bool closed = false;
    };
    std::vector<Chain> border(const std::function<bool(const Point2& middle)>& skipped) const;

private:
    std::map<std::pair<long, long>, std::uint32_t> place_;
    std::vector<Point2> points_;
    std::vector<Quad> quads_;
};

/// From the first value through all others to the last, in even steps of `step` or less.
std::vector<double> steps(const std::vector<double>& through, double step);

/// The rectangles between the lines, but for those whose middle `skipped` names.
void add_grid(ChartMesh& mesh, const std::vector<double>& us, const std::vector<double>& vs,
              const std::function<bool(const Point2& middle)>& skipped);

/// The border of such a grid, counter-clockwise from its lower left corner.
std::vector<Point2> grid_rim(const std::vector<double>& us, const std::vector<double>& vs);

/// A hole that can be seen whole from its centre.
struct Hole {
    Outline outline;
    Point2 centre;
};

/// What lies between the line `outer`, counter-clockwise around the hole, and the hole, in `rows`
/// rows. An open line gives an open strip.
enum class Line { open, closed };
void add_ring(ChartMesh& mesh, const std::vector<Point2>& outer, Line line, const Hole& hole,
              int rows);

/// The whole of the outline's inside: a grid in its middle, rings around that.
ChartMesh filled(const Outline& outline, double step);

} // namespace glim::demo
