#include "geometry/components.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

TriangleMesh on_points(std::size_t count, std::vector<Facet> facets)
{
    return {std::vector<Point>(count, Point::Zero()), std::move(facets)};
}

} // namespace

TEST_CASE("facets that share a corner hang together, and numbers follow first facets", "[geometry]")
{
    const TriangleMesh mesh = on_points(9, {{6, 7, 8}, {0, 1, 2}, {2, 3, 4}, {8, 7, 6}});
    CHECK(components_of(mesh) == std::vector<std::uint32_t>{0, 1, 1, 0});
}

TEST_CASE("a late facet joins what were two components", "[geometry]")
{
    const TriangleMesh mesh = on_points(7, {{0, 1, 2}, {3, 4, 5}, {2, 6, 3}});
    CHECK(components_of(mesh) == std::vector<std::uint32_t>{0, 0, 0});
}

TEST_CASE("equal places that were not welded stay apart", "[geometry]")
{
    CHECK(components_of(on_points(6, {{0, 1, 2}, {3, 4, 5}})) == std::vector<std::uint32_t>{0, 1});
}

TEST_CASE("a long strip is one component, and an empty mesh has none", "[geometry]")
{
    std::vector<Facet> strip;
    for (std::uint32_t i = 0; i < 50000; ++i)
        strip.push_back({i, i + 1, i + 2});
    const std::vector<std::uint32_t> numbers = components_of(on_points(50002, strip));
    CHECK(numbers == std::vector<std::uint32_t>(50000, 0));
    CHECK(components_of({}).empty());
}
