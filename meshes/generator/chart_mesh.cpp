#include "generator/chart_mesh.h"

#include <algorithm>
#include <cmath>

namespace glim::demo {
namespace {

/// Border edges by the point they start from and by the one they lead to.
struct Links {
    std::map<std::uint32_t, std::uint32_t> after;
    std::map<std::uint32_t, std::uint32_t> before;
};

std::uint32_t first_point(const Links& links)
{
    const std::uint32_t looked_from = links.after.begin()->first;
    std::uint32_t start = looked_from;
    for (auto back = links.before.find(start); back != links.before.end();
         back = links.before.find(start)) {
        if (back->second == looked_from)
            break;
        start = back->second;
    }
    return start;
}

ChartMesh::Chain taken_chain(Links& links)
{
    std::uint32_t at = first_point(links);
    ChartMesh::Chain chain{{at}, false};
    for (auto edge = links.after.find(at); edge != links.after.end(); edge = links.after.find(at)) {
        at = edge->second;
        links.after.erase(edge);
        links.before.erase(at);
        chain.closed = at == chain.points.front();
        if (!chain.closed)
            chain.points.push_back(at);
    }
    return chain;
}

/// Rings from the grid's rim out to the outline, along rays from `centre`.
void add_rings(ChartMesh& mesh, const std::vector<Point2>& rim, const Outline& outline,
               const Point2& centre, int rows)
{
    std::vector<Point2> far;
    far.reserve(rim.size());
    for (const Point2& p : rim)
        far.push_back(exit_point(outline, centre, p));
    const auto point = [&](std::size_t k, int row) {
        k %= rim.size();
        return mesh.point(row == 0 ? rim[k] : Point2(rim[k] + (far[k] - rim[k]) * row / rows));
    };
    for (std::size_t k = 0; k < rim.size(); ++k)
        for (int row = 0; row < rows; ++row)
            mesh.add({point(k, row), point(k, row + 1), point(k + 1, row + 1), point(k + 1, row)});
}

} // namespace

std::uint32_t ChartMesh::point(const Point2& p)
{
    // Two ways round the same line differ in the last bits; a millionth of a span or of a
    // millimetre is far below what is written.
    constexpr double grain = 1e-6;
    const auto next = static_cast<std::uint32_t>(points_.size());
    const auto [found, is_new] =
        place_.try_emplace({std::lround(p.x() / grain), std::lround(p.y() / grain)}, next);
    if (is_new)
        points_.push_back(p);
    return found->second;
}

std::vector<ChartMesh::Chain>
ChartMesh::border(const std::function<bool(const Point2& middle)>& skipped) const
{
    std::map<std::pair<std::uint32_t, std::uint32_t>, int> uses;
    for (const Quad& q : quads_)
        for (int i = 0; i < 4; ++i)
            ++uses[std::minmax(q[i], q[(i + 1) % 4])];

    Links links;
    for (const Quad& q : quads_)
        for (int i = 0; i < 4; ++i) {
            const std::uint32_t a = q[i];
            const std::uint32_t b = q[(i + 1) % 4];
            if (a == b || uses[std::minmax(a, b)] > 1 || skipped((points_[a] + points_[b]) / 2))
                continue;
            links.after[a] = b;
            links.before[b] = a;
        }

    std::vector<Chain> chains;
    while (!links.after.empty())
        chains.push_back(taken_chain(links));
    return chains;
}

std::vector<double> steps(const std::vector<double>& through, double step)
{
    std::vector<double> result{through.front()};
    for (std::size_t i = 1; i < through.size(); ++i) {
        const double from = through[i - 1];
        const double length = through[i] - from;
        const int pieces = std::max(1, static_cast<int>(std::ceil(length / step - 1e-9)));
        for (int k = 1; k < pieces; ++k)
            result.push_back(from + length * k / pieces);
        result.push_back(through[i]);
    }
    return result;
}

void add_grid(ChartMesh& mesh, const std::vector<double>& us, const std::vector<double>& vs,
              const std::function<bool(const Point2& middle)>& skipped)
{
    for (std::size_t j = 0; j + 1 < vs.size(); ++j)
        for (std::size_t i = 0; i + 1 < us.size(); ++i) {
            if (skipped({(us[i] + us[i + 1]) / 2, (vs[j] + vs[j + 1]) / 2}))
                continue;
            mesh.add({mesh.point({us[i], vs[j]}), mesh.point({us[i + 1], vs[j]}),
                      mesh.point({us[i + 1], vs[j + 1]}), mesh.point({us[i], vs[j + 1]})});
        }
}

void add_ring(ChartMesh& mesh, const std::vector<Point2>& outer, Line line, const Hole& hole,
              int rows)
{
    std::vector<Point2> inner;
    inner.reserve(outer.size());
    for (const Point2& p : outer)
        inner.push_back(exit_point(hole.outline, hole.centre, p));
    const auto point = [&](std::size_t k, int row) {
        k %= outer.size();
        if (row == rows)
            return mesh.point(outer[k]);
        // Finer towards the hole, where the shape turns.
        const double share = std::pow(static_cast<double>(row) / rows, 1.5);
        return mesh.point(inner[k] + (outer[k] - inner[k]) * share);
    };
    const std::size_t strips = line == Line::closed ? outer.size() : outer.size() - 1;
    for (std::size_t k = 0; k < strips; ++k)
        for (int row = 0; row < rows; ++row)
            mesh.add({point(k, row + 1), point(k + 1, row + 1), point(k + 1, row), point(k, row)});
}

std::vector<Point2> grid_rim(const std::vector<double>& us, const std::vector<double>& vs)
{
    std::vector<Point2> rim;
    rim.reserve(2 * (us.size() + vs.size()));
    for (double u : us)
        rim.emplace_back(u, vs.front());
    for (std::size_t j = 1; j < vs.size(); ++j)
        rim.emplace_back(us.back(), vs[j]);
    for (std::size_t i = us.size() - 1; i-- > 0;)
        rim.emplace_back(us[i], vs.back());
    for (std::size_t j = vs.size() - 1; j-- > 1;)
        rim.emplace_back(us.front(), vs[j]);
    return rim;
}

ChartMesh filled(const Outline& outline, double step)
{
    // The share of the outline's box that the grid takes; the rings need the rest to turn its
    // sharp corners into round ones.
    constexpr double grid_share = 0.6;
    const Point2 centre = middle(outline);
    Point2 half = Point2::Zero();
    for (const Point2& p : outline)
        half = half.cwiseMax((p - centre).cwiseAbs());

    const Point2 inner = grid_share * half;
    const std::vector<double> us = steps({centre.x() - inner.x(), centre.x() + inner.x()}, step);
    const std::vector<double> vs = steps({centre.y() - inner.y(), centre.y() + inner.y()}, step);
    ChartMesh mesh;
    add_grid(mesh, us, vs, [](const Point2&) { return false; });
    const int rows = std::max(1, static_cast<int>(std::ceil((half - inner).minCoeff() / step)));
    add_rings(mesh, grid_rim(us, vs), outline, centre, rows);
    return mesh;
}

} // namespace glim::demo
