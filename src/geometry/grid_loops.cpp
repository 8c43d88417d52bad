#include "geometry/grid_loops.h"

#include <algorithm>
#include <utility>

namespace glim {

namespace {

struct GridEdge {
    GridPoint from, to;

    friend auto operator<=>(const GridEdge&, const GridEdge&) = default;
    GridEdge turned() const { return {to, from}; }
    const GridEdge undirected() const { return from < to ? *this : turned(); }
};

std::vector<GridEdge> edges_of(const std::vector<GridLoop>& loops)
{
    std::vector<GridEdge> edges;
    for (const GridLoop& loop : loops)
        for (std::size_t i = 0; i < loop.size(); ++i)
            if (const GridEdge edge{loop[i], loop[i + 1 < loop.size() ? i + 1 : 0]};
                edge.from != edge.to)
                edges.push_back(edge);
    return edges;
}

/// By their beginnings, each as often as it is gone along more than against.
std::vector<GridEdge> unshared(std::vector<GridEdge> edges)
{
    std::sort(edges.begin(), edges.end(), [](const GridEdge& a, const GridEdge& b) {
        return std::pair(a.undirected(), a) < std::pair(b.undirected(), b);
    });
    std::vector<GridEdge> left;
    for (auto first = edges.begin(); first != edges.end();) {
        const GridEdge edge = first->undirected();
        long along = 0;
        for (; first != edges.end() && first->undirected() == edge; ++first)
            along += *first == edge ? 1 : -1;
        left.insert(left.end(), static_cast<std::size_t>(std::abs(along)),
                    along > 0 ? edge : edge.turned());
    }
    std::sort(left.begin(), left.end());
    return left;
}

} // namespace

// As many edges end at a point as begin there, before and after, so every walk comes back to where
// it began.
std::vector<GridLoop> without_shared_edges(const std::vector<GridLoop>& loops)
{
    const std::vector<GridEdge> edges = unshared(edges_of(loops));
    std::vector<bool> used(edges.size());
    std::vector<GridLoop> found;
    for (std::size_t start = 0; start < edges.size(); ++start) {
        if (used[start])
            continue;
        GridLoop loop;
        for (std::size_t at = start;;) {
            used[at] = true;
            loop.push_back(edges[at].from);
            if (edges[at].to == edges[start].from)
                break;
            const GridPoint here = edges[at].to;
            at = static_cast<std::size_t>(
                std::lower_bound(edges.begin(), edges.end(), here,
                                 [](const GridEdge& e, const GridPoint& p) { return e.from < p; }) -
                edges.begin());
            while (used[at])
                ++at;
        }
        found.push_back(std::move(loop));
    }
    return found;
}

} // namespace glim
