#include "geometry/edge_uses.h"

#include <catch2/catch.hpp>

#include <tuple>

using namespace glim;

namespace {

using Seen = std::tuple<std::uint32_t, std::uint32_t, std::uint32_t, bool>;

std::vector<Seen> uses_of(std::vector<Facet> facets)
{
    const TriangleMesh mesh{std::vector<Point>(5, Point::Zero()), std::move(facets)};
    std::vector<Seen> seen;
    for (const EdgeUse& use : edge_uses(mesh))
        seen.emplace_back(use.from, use.to, use.facet, use.forward);
    return seen;
}

} // namespace

TEST_CASE("the uses of an edge stand behind each other, with the way each facet runs", "[geometry]")
{
    CHECK(uses_of({{0, 2, 1}, {1, 2, 3}}) == std::vector<Seen>{{0, 1, 0, false},
                                                               {0, 2, 0, true},
                                                               {1, 2, 0, false},
                                                               {1, 2, 1, true},
                                                               {1, 3, 1, false},
                                                               {2, 3, 1, true}});
}

TEST_CASE("a facet with two equal corners has no edges", "[geometry]")
{
    CHECK(uses_of({{0, 0, 1}, {2, 3, 2}, {4, 4, 4}}).empty());
    CHECK(uses_of({}).empty());
}

TEST_CASE("three facets on one edge are all there, by their places", "[geometry]")
{
    const std::vector<Seen> uses = uses_of({{0, 1, 2}, {1, 0, 3}, {0, 1, 4}});
    CHECK(std::vector<Seen>(uses.begin(), uses.begin() + 3) ==
          std::vector<Seen>{{0, 1, 0, true}, {0, 1, 1, false}, {0, 1, 2, true}});
}
