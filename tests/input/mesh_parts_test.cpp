#include "input/mesh_parts.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("parts are numbered by their first facet, and names without one make no part", "[input]")
{
    MeshParts parts;
    parts.set(&MeshPart::group, "unused");
    parts.set(&MeshPart::group, "lens");
    CHECK(parts.current() == 0);
    parts.set(&MeshPart::material, "amber");
    CHECK(parts.current() == 1);
    parts.set(&MeshPart::material, "");
    CHECK(parts.current() == 0);
    CHECK(parts.take() == std::vector<MeshPart>{{"", "lens", ""}, {"", "lens", "amber"}});
}

TEST_CASE("object, group and material are told apart, even where the names are the same", "[input]")
{
    MeshParts parts;
    parts.set(&MeshPart::object, "a");
    CHECK(parts.current() == 0);
    parts.set(&MeshPart::object, "");
    parts.set(&MeshPart::group, "a");
    CHECK(parts.current() == 1);
}
