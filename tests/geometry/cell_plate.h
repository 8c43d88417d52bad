#pragma once

#include "geometry/weld.h"

namespace glim::test {

/// At x = 0, facing -x: from (0, 0) to (100, 50) mm in y and z, cut into `columns` x `rows` cells
/// of two triangles.
inline TriangleMesh plate(int columns = 6, int rows = 5)
{
    TriangleMesh mesh;
    for (int i = 0; i < columns; ++i)
        for (int k = 0; k < rows; ++k) {
            const auto first = static_cast<std::uint32_t>(mesh.points.size());
            for (const auto& [di, dk] : {std::pair(0, 0), {1, 0}, {1, 1}, {0, 1}})
                mesh.points.emplace_back(0, 100.0 * (i + di) / columns, 50.0 * (k + dk) / rows);
            mesh.facets.push_back({first, first + 2, first + 1});
            mesh.facets.push_back({first, first + 3, first + 2});
        }
    return welded(mesh);
}

} // namespace glim::test
