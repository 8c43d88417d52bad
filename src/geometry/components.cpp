#include "geometry/components.h"

#include "geometry/groups.h"

namespace glim {

std::vector<std::uint32_t> components_of(const TriangleMesh& mesh)
{
    Groups groups(mesh.points.size());
    for (const Facet& f : mesh.facets) {
        groups.join(f[0], f[1]);
        groups.join(f[0], f[2]);
    }
    constexpr std::uint32_t unnumbered = std::numeric_limits<std::uint32_t>::max();
    std::vector<std::uint32_t> number_of_root(mesh.points.size(), unnumbered);
    std::vector<std::uint32_t> numbers;
    numbers.reserve(mesh.facets.size());
    std::uint32_t next = 0;
    for (const Facet& f : mesh.facets) {
        std::uint32_t& number = number_of_root[groups.root_of(f[0])];
        if (number == unnumbered)
            number = next++;
        numbers.push_back(number);
    }
    return numbers;
}

} // namespace glim
