#include "report/coloured_mesh.h"

#include "specimens/made_findings.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;

// tests/report/read_coloured_mesh.py reads whole files back, byte by byte.

namespace {

std::vector<BlockingSurface> made_surfaces()
{
    const Findings findings = test::made_findings();
    return blocking_surfaces(findings.checks[0].deciding_verdict(), test::made_study());
}

std::size_t lines_that_begin(const std::string& text, const std::string& with)
{
    std::size_t count = text.starts_with(with) ? 1 : 0;
    for (std::size_t at = 0; (at = text.find("\n" + with, at)) != std::string::npos; ++at)
        ++count;
    return count;
}

} // namespace

TEST_CASE("a PLY says what it holds, and is as long as that", "[report]")
{
    const std::string ply = coloured_ply(made_surfaces());
    CHECK(ply.starts_with("ply\nformat binary_little_endian 1.0\n"));
    CHECK(ply.find("comment surface 0 is nose-mirrored\ncomment surface 1 is badge-glim\n") !=
          std::string::npos);
    CHECK(ply.find("element vertex 33\n") != std::string::npos);
    CHECK(ply.find("element face 11\n") != std::string::npos);
    const std::size_t body = ply.find("end_header\n") + 11;
    CHECK(ply.size() - body == 33 * 12 + 11 * (1 + 12 + 3 + 4 + 4 + 4));
    // 220 as a little-endian float: 0x435C0000.
    CHECK(ply.substr(body, 4) == std::string("\0\0\x5C\x43", 4));
}

TEST_CASE("an OBJ holds its surfaces as objects and its colours as classes", "[report]")
{
    const std::string obj = coloured_obj(made_surfaces(), "across.mtl");
    CHECK(obj.find("mtllib across.mtl\no nose-mirrored\nv 220 -660 600\n") != std::string::npos);
    CHECK(lines_that_begin(obj, "v ") == 33);
    CHECK(lines_that_begin(obj, "f ") == 11);
    // Facet 7 has the full colour; facet 3 takes little, which is not nothing; winding is turned
    // with the mirror.
    CHECK(obj.find("usemtl takes_1\nf 10 12 11\nusemtl takes_nothing\n") != std::string::npos);
    CHECK(obj.find("usemtl takes_7\nf 22 24 23\nusemtl takes_nothing\n") != std::string::npos);
    CHECK(obj.find("o badge-glim\nv 175 0 695\n") != std::string::npos);
    CHECK(obj.ends_with("usemtl takes_1\nf 31 32 33\n"));
}

TEST_CASE("every material that an OBJ may name is there", "[report]")
{
    const std::string materials = colour_materials();
    CHECK(lines_that_begin(materials, "newmtl ") == colour_classes);
    CHECK(materials.find("newmtl takes_nothing\nKd 0.8314 0.8314 0.8314\n") != std::string::npos);
    CHECK(materials.find("newmtl takes_7\n") != std::string::npos);
}

TEST_CASE("no surface makes meshes without faces", "[report]")
{
    CHECK(coloured_ply({}).find("element face 0\n") != std::string::npos);
    CHECK(lines_that_begin(coloured_obj({}, "x.mtl"), "f") == 0);
}
