#include "visibility/lit_outline.h"

#include <algorithm>
#include <tuple>

namespace glim {

LitOutline::LitOutline(const TriangleMesh& lit)
{
    struct Use {
        std::uint32_t from, to, facet;
        auto ends() const { return std::tie(from, to); }
    };
    std::vector<Use> uses;
    uses.reserve(3 * lit.facets.size());
    for (std::uint32_t f = 0; f < lit.facets.size(); ++f) {
        normals_.push_back(area_vector(lit, f));
        for (int i = 0; i < 3; ++i) {
            const auto [a, b] = std::minmax(lit.facets[f][i], lit.facets[f][(i + 1) % 3]);
            uses.push_back({a, b, f});
        }
    }
    std::sort(uses.begin(), uses.end(), [](const Use& a, const Use& b) {
        return std::tie(a.from, a.to, a.facet) < std::tie(b.from, b.to, b.facet);
    });
    for (const Use& use : uses) {
        const auto place = static_cast<std::uint32_t>(facets_at_edges_.size());
        if (place == 0 || use.ends() != uses[place - 1].ends())
            edges_.push_back({lit.points[use.to] - lit.points[use.from], place, 0});
        ++edges_.back().count;
        facets_at_edges_.push_back(use.facet);
    }
}

Length LitOutline::toward(const Direction& toward) const
{
    double sum = 0;
    for (const Edge& edge : edges_) {
        const auto at = facets_at_edges_.begin() + edge.first;
        const auto facing = std::count_if(
            at, at + edge.count, [&](std::uint32_t f) { return toward.dot(normals_[f]) > 0; });
        if (facing == 0 || facing == 2)
            continue;
        sum += (edge.along - toward.dot(edge.along) * toward.vector()).norm();
    }
    return millimetres(sum);
}

Length lit_outline(const TriangleMesh& lit, const Direction& toward)
{
    return LitOutline(lit).toward(toward);
}

} // namespace glim
