#include "geometry/normal_offset.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

/// Square to x, 60 by 40 mm.
TriangleMesh plate()
{
    return {{{10, -30, -20}, {10, 30, -20}, {10, 30, 20}, {10, -30, 20}}, {{0, 1, 2}, {0, 2, 3}}};
}

/// From the origin to (100, 60, 20); corner i has a bit of i an axis.
TriangleMesh box()
{
    TriangleMesh mesh;
    for (int i = 0; i < 8; ++i)
        mesh.points.emplace_back((i & 1) * 100.0, (i >> 1 & 1) * 60.0, (i >> 2) * 20.0);
    for (const std::array<std::uint32_t, 4>& side : {std::array<std::uint32_t, 4>{0, 4, 6, 2},
                                                     {1, 3, 7, 5},
                                                     {0, 1, 5, 4},
                                                     {2, 6, 7, 3},
                                                     {0, 2, 3, 1},
                                                     {4, 5, 7, 6}}) {
        mesh.facets.push_back({side[0], side[1], side[2]});
        mesh.facets.push_back({side[0], side[2], side[3]});
    }
    return mesh;
}

TriangleMesh offset(const TriangleMesh& mesh, double by_mm)
{
    return offset_by(mesh, normal_offsets(mesh), millimetres(by_mm));
}

/// The same facets, none of which shares a point with another.
TriangleMesh soup_of(const TriangleMesh& mesh)
{
    TriangleMesh soup;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
        const auto first = static_cast<std::uint32_t>(soup.points.size());
        for (int i = 0; i < 3; ++i)
            soup.points.push_back(mesh.corner(f, i));
        soup.facets.push_back({first, first + 1, first + 2});
    }
    return soup;
}

} // namespace

TEST_CASE("a plate moves across itself", "[geometry]")
{
    for (const Point& p : offset(plate(), 2).points)
        CHECK(p.x() == Approx(12));
    CHECK(box_of(offset(plate(), 2)).size().y() == Approx(60));
}

TEST_CASE("each side of a box moves by the offset, however its facets are stored", "[geometry]")
{
    const TriangleMesh cube = box();
    for (const TriangleMesh& mesh : {cube, soup_of(cube)}) {
        const Box grown = box_of(offset(mesh, 3));
        // Closed form: every face 3 mm outward; angles at a corner weigh the three faces alike.
        CHECK((grown.least - Point(-3, -3, -3)).norm() < 1e-9);
        CHECK((grown.most - Point(103, 63, 23)).norm() < 1e-9);
        const Box shrunk = box_of(offset(mesh, -3));
        CHECK((shrunk.most - Point(97, 57, 17)).norm() < 1e-9);
    }
}
