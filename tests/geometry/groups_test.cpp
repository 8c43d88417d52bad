#include "geometry/groups.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("things joined by way of others are together, and no others", "[geometry]")
{
    Groups groups(6);
    CHECK_FALSE(groups.together(0, 3));
    groups.join(0, 1);
    groups.join(3, 2);
    CHECK_FALSE(groups.together(1, 2));
    groups.join(2, 1);
    CHECK(groups.together(0, 3));
    CHECK_FALSE(groups.together(0, 4));
    CHECK(groups.together(5, 5));
}

TEST_CASE("a group has one root, and joining it with itself changes nothing", "[geometry]")
{
    Groups groups(1000);
    for (std::uint32_t i = 1; i < 1000; ++i)
        groups.join(i, i - 1);
    const std::uint32_t root = groups.root_of(0);
    groups.join(7, 900);
    for (std::uint32_t i = 0; i < 1000; ++i)
        CHECK(groups.root_of(i) == root);
}
