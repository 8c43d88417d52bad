#include "report/mesh_files.h"

#include <catch2/catch.hpp>

#include <cstring>

using namespace glim;

namespace {

const TriangleMesh triangle{{{0.1, 0, 0}, {2, 0, 0}, {0, 3, 0}}, {{0, 1, 2}}};

float float_at(const std::string& bytes, std::size_t at)
{
    float value = 0;
    std::memcpy(&value, bytes.data() + at, sizeof value);
    return value;
}

} // namespace

TEST_CASE("an OBJ numbers its points on from part to part", "[report]")
{
    const std::vector<NamedPart> parts{{"front nose", &triangle}, {"lens", &triangle}};
    CHECK(obj_of(parts) == "o front_nose\nv 0.1 0 0\nv 2 0 0\nv 0 3 0\nf 1 2 3\n"
                           "o lens\nv 0.1 0 0\nv 2 0 0\nv 0 3 0\nf 4 5 6\n");
}

TEST_CASE("an STL has 80 bytes of comment, a count, and 50 bytes a facet", "[report]")
{
    const std::string bytes = stl_of(triangle, "cornerglim");
    REQUIRE(bytes.size() == 80 + 4 + 50);
    CHECK(bytes[80] == 1);
    CHECK(float_at(bytes, 84 + 8) == 1.0F);       // the normal, +z
    CHECK(float_at(bytes, 84 + 12) == 0.1F);      // the first corner's x
    CHECK(float_at(bytes, 84 + 12 + 28) == 3.0F); // the last one's y
}

TEST_CASE("a PLY carries a figure and a colour for each of its points", "[report]")
{
    const std::string bytes =
        ply_of(triangle, {"depth_mm", {1.5, 0, 0}, {white, black, black}}, "depths");
    const std::size_t body = bytes.find("end_header\n") + 11;
    CHECK(bytes.find("property float depth_mm\n") < body);
    CHECK(bytes.size() - body == 3 * (12 + 3 + 4) + 13);
    CHECK(bytes.substr(body + 12, 3) == "\xFF\xFF\xFF");
    CHECK(float_at(bytes, body + 15) == 1.5F);
}
