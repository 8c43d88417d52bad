#include "remedy/refine_surface.h"

#include <algorithm>
#include <unordered_map>

namespace glim {

// Done here and not with a mesh library's half-edges: those turn away facets on an edge that has
// two already, and what is turned away becomes see-through.

namespace {

constexpr std::uint32_t whole = ~std::uint32_t{0};

/// Halves longest edges only, and with any edge of a facet its longest one too: so the smallest
/// angle of all parts, however often they are halved again, stays at least half of what it was
/// (I. G. Rosenberg, F. Stenger, "A lower bound on the angles of triangles constructed by bisecting
/// the longest side", Mathematics of Computation 29, 1975).
class Halver {
public:
    Halver(const NumberedMesh& numbered, const Direction& push)
        : from_(numbered), push_(push), points_(numbered.mesh.points)
    {
    }

    void halve(std::size_t facet)
    {
        const int i = longest_of(from_.mesh.facets[facet]);
        halve_edge(from_.mesh.facets[facet], i);
    }
    void halve_whatever_must_be();
    NumberedMesh divided();

private:
    static std::uint64_t key_of(std::uint32_t a, std::uint32_t b)
    {
        return (std::uint64_t{std::min(a, b)} << 32) | std::max(a, b);
    }
    static std::uint64_t key_of(const Facet& f, int edge)
    {
        return key_of(f[edge], f[(edge + 1) % 3]);
    }
    /// Of equally long ones the same for all facets on it.
    int longest_of(const Facet& f) const
    {
        const auto rank = [&](int i) {
            return std::pair(counted_length(points_[f[i]] - points_[f[(i + 1) % 3]], push_),
                             key_of(f, i));
        };
        const int first = rank(0) >= rank(1) ? 0 : 1;
        return rank(first) >= rank(2) ? first : 2;
    }
    bool halve_edge(const Facet& f, int edge)
    {
        const auto [entry, is_new] =
            middles_.emplace(key_of(f, edge), static_cast<std::uint32_t>(points_.size()));
        if (is_new)
            points_.emplace_back((points_[f[edge]] + points_[f[(edge + 1) % 3]]) / 2);
        return is_new;
    }
    std::uint32_t middle(const Facet& f, int edge) const
    {
        const auto found = middles_.find(key_of(f, edge));
        return found == middles_.end() ? whole : found->second;
    }
    void divide(const Facet& f);

    const NumberedMesh& from_;
    const Direction& push_;
    std::vector<Point> points_;
    std::vector<Facet> facets_;
    std::unordered_map<std::uint64_t, std::uint32_t> middles_;
};

void Halver::halve_whatever_must_be()
{
    bool more = !middles_.empty();
    while (more) {
        more = false;
        for (const Facet& f : from_.mesh.facets) {
            const bool any =
                middle(f, 0) != whole || middle(f, 1) != whole || middle(f, 2) != whole;
            if (any && halve_edge(f, longest_of(f)))
                more = true;
        }
    }
}

void Halver::divide(const Facet& f)
{
    const int longest = longest_of(f);
    const std::uint32_t m = middle(f, longest);
    if (m == whole) {
        facets_.push_back(f);
        return;
    }
    const std::uint32_t a = f[longest];
    const std::uint32_t b = f[(longest + 1) % 3];
    const std::uint32_t c = f[(longest + 2) % 3];
    if (const std::uint32_t q = middle(f, (longest + 2) % 3); q != whole)
        facets_.insert(facets_.end(), {{a, m, q}, {q, m, c}});
    else
        facets_.push_back({a, m, c});
    if (const std::uint32_t r = middle(f, (longest + 1) % 3); r != whole)
        facets_.insert(facets_.end(), {{m, b, r}, {m, r, c}});
    else
        facets_.push_back({m, b, c});
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

double counted_length(const Vector& edge, const Direction& push)
{
    constexpr double along_share = 0.25;
    const double along = push.dot(edge);
    return (edge - (1 - along_share) * along * push.vector()).norm();
}

double longest_edge(const TriangleMesh& mesh, std::size_t facet, const Direction& push)
{
    double longest = 0;
    for (int i = 0; i < 3; ++i) {
        const Vector edge = mesh.corner(facet, i) - mesh.corner(facet, (i + 1) % 3);
        longest = std::max(longest, counted_length(edge, push));
    }
    return longest;
}

NumberedMesh with_halved_edges(const NumberedMesh& numbered,
                               const std::vector<std::uint8_t>& marked, const Direction& push)
{
    Halver halver(numbered, push);
    for (std::size_t f = 0; f < marked.size(); ++f)
        if (marked[f] != 0)
            halver.halve(f);
    halver.halve_whatever_must_be();
    return halver.divided();
}

} // namespace glim
