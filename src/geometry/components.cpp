#include "geometry/components.h"

#include <numeric>

namespace glim {

namespace {

/// Points in trees; those of one tree hang together.
class Trees {
public:
    explicit Trees(std::size_t points) : above_(points)
    {
        std::iota(above_.begin(), above_.end(), 0U);
    }

    std::uint32_t root_of(std::uint32_t point)
    {
        // Each step also halves the way for those who come later.
        while (above_[point] != point)
            point = above_[point] = above_[above_[point]];
        return point;
    }

    void join(std::uint32_t a, std::uint32_t b) { above_[root_of(b)] = root_of(a); }

private:
    std::vector<std::uint32_t> above_;
};

} // namespace

std::vector<std::uint32_t> components_of(const TriangleMesh& mesh)
{
    Trees trees(mesh.points.size());
    for (const Facet& f : mesh.facets) {
        trees.join(f[0], f[1]);
        trees.join(f[0], f[2]);
    }
    constexpr std::uint32_t unnumbered = std::numeric_limits<std::uint32_t>::max();
    std::vector<std::uint32_t> number_of_root(mesh.points.size(), unnumbered);
    std::vector<std::uint32_t> numbers;
    numbers.reserve(mesh.facets.size());
    std::uint32_t next = 0;
    for (const Facet& f : mesh.facets) {
        std::uint32_t& number = number_of_root[trees.root_of(f[0])];
        if (number == unnumbered)
            number = next++;
        numbers.push_back(number);
    }
    return numbers;
}

} // namespace glim
