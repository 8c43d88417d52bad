#include "shapes/random_bodies.h"

#include <Eigen/Geometry>

#include <cmath>
#include <functional>

namespace glim::shapes {

namespace {

struct Sheet {
    double width_mm;
    double height_mm;
    int cells_y;
    int cells_z;
};

/// A grid of pairs of triangles on shared points, facing +x, `depth` ahead of the plane x = 0.
TriangleMesh sheet(const Sheet& s, const std::function<double(int i, int j)>& depth)
{
    TriangleMesh mesh;
    for (int j = 0; j <= s.cells_z; ++j)
        for (int i = 0; i <= s.cells_y; ++i)
            mesh.points.emplace_back(depth(i, j), s.width_mm * (double(i) / s.cells_y - 0.5),
                                     s.height_mm * (double(j) / s.cells_z - 0.5));
    const auto at = [&](int i, int j) {
        return static_cast<std::uint32_t>(j * (s.cells_y + 1) + i);
    };
    for (int j = 0; j < s.cells_z; ++j)
        for (int i = 0; i < s.cells_y; ++i) {
            mesh.facets.push_back({at(i, j), at(i + 1, j), at(i + 1, j + 1)});
            mesh.facets.push_back({at(i, j), at(i + 1, j + 1), at(i, j + 1)});
        }
    return mesh;
}

Sheet some_size(RandomNumbers& random, int most_cells)
{
    return {.width_mm = random.real(6, 20),
            .height_mm = random.real(4, 12),
            .cells_y = random.whole(1, most_cells),
            .cells_z = random.whole(1, most_cells)};
}

TriangleMesh flat(RandomNumbers& random)
{
    return sheet(some_size(random, 2), [](int, int) { return 0.0; });
}

/// Convex, concave or a saddle, by the signs of two curvatures.
TriangleMesh curved(RandomNumbers& random)
{
    const Sheet s = some_size(random, 4);
    const double bow_y = random.real(-5, 5);
    const double bow_z = random.real(-3, 3);
    return sheet(s, [=](int i, int j) {
        const double y = 2.0 * i / s.cells_y - 1;
        const double z = 2.0 * j / s.cells_z - 1;
        return bow_y * y * y + bow_z * z * z;
    });
}

/// Pleats that hide each other from the side.
TriangleMesh folded(RandomNumbers& random)
{
    Sheet s = some_size(random, 2);
    s.cells_y = random.whole(2, 5);
    const double deep = random.real(1, 12);
    return sheet(s, [=](int i, int) { return i % 2 == 0 ? 0 : deep; });
}

TriangleMesh rough(RandomNumbers& random)
{
    const Sheet s = some_size(random, 3);
    const double deep = random.real(0.5, 6);
    return sheet(s, [&](int, int) { return random.real(0, deep); });
}

/// Long facets of little width, as tessellations leave them along an edge; flat, or pleats so
/// narrow that every corner of the lattice belongs to facets that look different ways.
TriangleMesh slivers(RandomNumbers& random)
{
    const Sheet s{.width_mm = random.real(0.2, 2),
                  .height_mm = random.real(10, 20),
                  .cells_y = random.whole(1, 5),
                  .cells_z = 1};
    const double deep = random.percent(50) ? 0 : random.magnitude(0.05, 4);
    return sheet(s, [=](int i, int) { return i % 2 == 0 ? 0 : deep; });
}

constexpr std::array kinds = {
    LitKind{"flat", flat},   LitKind{"curved", curved},   LitKind{"folded", folded},
    LitKind{"rough", rough}, LitKind{"slivers", slivers},
};

} // namespace

std::span<const LitKind> lit_kinds() { return kinds; }

} // namespace glim::shapes
