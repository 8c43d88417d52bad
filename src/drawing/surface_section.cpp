#include "drawing/surface_section.h"

#include "drawing/chained_lines.h"

#include <algorithm>
#include <map>

namespace glim {

namespace {

class Cutter {
public:
    Cutter(const TriangleMesh& mesh, std::span<const double> figures, const Point& on,
           const Direction& normal)
        : mesh_(mesh), figures_(figures)
    {
        heights_.reserve(mesh.points.size());
        for (const Point& p : mesh.points)
            heights_.push_back(normal.dot(Vector(p - on)));
    }

    std::vector<SectionLine> cut()
    {
        std::vector<LineStep> steps;
        for (const Facet& facet : mesh_.facets)
            add_step(facet, steps);
        std::vector<SectionLine> lines;
        for (const ChainedLine& chain : chained(steps)) {
            SectionLine line{{}, chain.closed};
            for (const std::uint64_t number : chain.points)
                line.points.push_back(points_[number]);
            lines.push_back(std::move(line));
        }
        return lines;
    }

private:
    bool before(std::uint32_t p) const { return heights_[p] >= 0; }

    /// From where the facet's rim goes behind the plane to where it comes back.
    void add_step(const Facet& facet, std::vector<LineStep>& steps)
    {
        std::uint64_t down = 0, up = 0;
        bool crosses = false;
        for (std::size_t i = 0; i < 3; ++i) {
            const std::uint32_t a = facet[i], b = facet[(i + 1) % 3];
            if (before(a) == before(b))
                continue;
            crosses = true;
            (before(a) ? down : up) = number_of(a, b);
        }
        if (crosses)
            steps.push_back({down, up});
    }

    /// Facets that share an edge share the point on it.
    std::uint64_t number_of(std::uint32_t a, std::uint32_t b)
    {
        const auto edge = std::minmax(a, b);
        const auto [known, is_new] = numbers_.try_emplace(edge, points_.size());
        if (is_new)
            points_.push_back(point_on(edge.first, edge.second));
        return known->second;
    }

    SectionPoint point_on(std::uint32_t a, std::uint32_t b) const
    {
        const double share = heights_[a] / (heights_[a] - heights_[b]);
        const auto between = [&](const auto& at_a, const auto& at_b) {
            return at_a + share * (at_b - at_a);
        };
        return {between(mesh_.points[a], mesh_.points[b]),
                figures_.empty() ? 0 : between(figures_[a], figures_[b])};
    }

    const TriangleMesh& mesh_;
    std::span<const double> figures_;
    std::vector<double> heights_; ///< of the points, before the plane
    std::map<std::pair<std::uint32_t, std::uint32_t>, std::uint64_t> numbers_;
    std::vector<SectionPoint> points_;
};

} // namespace

std::vector<SectionLine> surface_section(const TriangleMesh& mesh, std::span<const double> figures,
                                         const Point& on, const Direction& normal)
{
    return Cutter(mesh, figures, on, normal).cut();
}

} // namespace glim
