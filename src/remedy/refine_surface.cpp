#include "remedy/refine_surface.h"

#include <algorithm>
#include <unordered_map>

namespace glim {

// Done here and not with a mesh library's half-edges: those turn away facets on an edge that has
// two already, and what is turned away becomes see-through.

namespace {

constexpr std::uint32_t whole = ~std::uint32_t{0};

class Halver {
public:
    Halver(const NumberedMesh& numbered, double longest_mm)
        : from_(numbered), longest_(longest_mm), points_(numbered.mesh.points)
    {
    }

    void halve_edges_of(std::size_t facet)
    {
        const Facet& f = from_.mesh.facets[facet];
        for (int i = 0; i < 3; ++i)
            halve(f[i], f[(i + 1) % 3]);
    }

    NumberedMesh divided();

private:
    static std::uint64_t key_of(std::uint32_t a, std::uint32_t b)
    {
        return (std::uint64_t{std::min(a, b)} << 32) | std::max(a, b);
    }
    double length(std::uint32_t a, std::uint32_t b) const
    {
        return (points_[a] - points_[b]).norm();
    }

    void halve(std::uint32_t a, std::uint32_t b)
    {
        if (length(a, b) <= longest_)
            return;
        const auto [entry, is_new] =
            middles_.emplace(key_of(a, b), static_cast<std::uint32_t>(points_.size()));
        if (is_new)
            points_.emplace_back((points_[a] + points_[b]) / 2);
    }
    std::uint32_t middle(std::uint32_t a, std::uint32_t b) const
    {
        const auto found = middles_.find(key_of(a, b));
        return found == middles_.end() ? whole : found->second;
    }
    void add(std::uint32_t a, std::uint32_t b, std::uint32_t c) { facets_.push_back({a, b, c}); }
    void divide(const Facet& f);
    void divide_one(std::uint32_t a, std::uint32_t ab, std::uint32_t b, std::uint32_t c)
    {
        add(a, ab, c);
        add(ab, b, c);
    }
    void divide_two(const Facet& f, std::uint32_t ab, std::uint32_t bc);

    const NumberedMesh& from_;
    double longest_;
    std::vector<Point> points_;
    std::vector<Facet> facets_;
    std::unordered_map<std::uint64_t, std::uint32_t> middles_;
};

/// The quadrilateral that is left beside corner b is cut along its shorter diagonal.
void Halver::divide_two(const Facet& f, std::uint32_t ab, std::uint32_t bc)
{
    const auto [a, b, c] = f;
    add(ab, b, bc);
    if (length(a, bc) <= length(ab, c)) {
        add(a, ab, bc);
        add(a, bc, c);
    } else {
        add(a, ab, c);
        add(ab, bc, c);
    }
}

void Halver::divide(const Facet& f)
{
    const auto [a, b, c] = f;
    const std::array<std::uint32_t, 3> m = {middle(a, b), middle(b, c), middle(c, a)};
    const auto count = 3 - std::count(m.begin(), m.end(), whole);
    if (count == 0)
        return add(a, b, c);
    if (count == 3) {
        add(a, m[0], m[2]);
        add(m[0], b, m[1]);
        add(m[2], m[1], c);
        return add(m[0], m[1], m[2]);
    }
    for (std::uint32_t i = 0; i < 3; ++i) {
        const std::uint32_t j = (i + 1) % 3;
        const std::uint32_t k = (i + 2) % 3;
        if (count == 1 && m[i] != whole)
            return divide_one(f[i], m[i], f[j], f[k]);
        if (count == 2 && m[k] == whole)
            return divide_two({f[i], f[j], f[k]}, m[i], m[j]);
    }
}

NumberedMesh Halver::divided()
{
    NumberedMesh to;
    for (std::size_t f = 0; f < from_.mesh.facets.size(); ++f) {
        divide(from_.mesh.facets[f]);
        to.of.resize(facets_.size(), from_.of[f]);
    }
    to.mesh.points = std::move(points_);
    to.mesh.facets = std::move(facets_);
    return to;
}

} // namespace

double longest_edge(const TriangleMesh& mesh, std::size_t facet)
{
    double longest = 0;
    for (int i = 0; i < 3; ++i)
        longest =
            std::max(longest, (mesh.corner(facet, i) - mesh.corner(facet, (i + 1) % 3)).norm());
    return longest;
}

NumberedMesh with_halved_edges(const NumberedMesh& numbered,
                               const std::vector<std::uint8_t>& marked, double longest_mm)
{
    Halver halver(numbered, longest_mm);
    for (std::size_t f = 0; f < marked.size(); ++f)
        if (marked[f] != 0)
            halver.halve_edges_of(f);
    return halver.divided();
}

} // namespace glim
