#include "input/read_off.h"

#include "model/complaint.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

MeshFile read(const std::string& text) { return read_off(text, "test.off"); }

void expect_square(const MeshFile& file)
{
    CHECK(file.mesh.points == std::vector<Point>{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {1, 1, 0}});
    CHECK(file.mesh.facets == std::vector<Facet>{{0, 1, 2}, {1, 3, 2}});
    CHECK(file.polygons_in_file == 2);
}

} // namespace

TEST_CASE("a square in OFF is read with comments, blank lines and colours", "[input]")
{
    expect_square(read("OFF\n4 2 0\n0 0 0\n1 0 0\n1 1 0\n0 1 -0.0\n3 0 1 3\n3 1 2 3\n"));
    expect_square(read("# a square\nOFF # so\n\n4 2\n# points\n0 0 0\n1 0 0 # one\n1 1 0\n\n0 1 0\n"
                       "3 0 1 3 255 0 0\n3 1 2 3 0.5 0.5 0.5 1\n\n"));
    expect_square(read("OFF 4 2 5\r\n0 0 0\r\n1 0 0\r\n1 1 0\r\n0 1 0\r\n3 0 1 3\r\n3 1 2 3"));
}

TEST_CASE("letters before OFF tell what else each point has", "[input]")
{
    expect_square(read("COFF\n4 2 0\n0 0 0 255 0 0 255\n1 0 0 255 0 0\n1 1 0 1 1 1\n0 1 0 1 1 1 1\n"
                       "3 0 1 3\n3 1 2 3\n"));
    expect_square(read("NOFF\n4 2 0\n0 0 0 0 0 1\n1 0 0 0 0 1\n1 1 0 0 0 1\n0 1 0 0 0 1\n"
                       "3 0 1 3\n3 1 2 3\n"));
    CHECK(looks_like_off("# first\nSTCNOFF\n"));
    CHECK_FALSE(looks_like_off("OFFICE\n"));
    CHECK_FALSE(looks_like_off("v 1 2 3\n"));
}

TEST_CASE("an OFF file has no parts, and its polygons are cut", "[input]")
{
    const MeshFile file = read("OFF\n4 1 0\n0 0 0\n2.25 0 0\n2.25 1 0\n0 1 0\n4 0 1 2 3\n");
    CHECK(file.format == "OFF");
    CHECK(file.parts == std::vector<MeshPart>{{}});
    CHECK(file.part_of_facet == std::vector<std::uint32_t>{0, 0});
    CHECK(in_mm2(area_of(file.mesh)) == 2.25);
    CHECK(file.decimals == 3);
}

TEST_CASE("faces that OpenMesh would leave out are kept", "[input]")
{
    const MeshFile file = read("OFF\n4 5 0\n0 0 0\n1 0 0\n0 1 0\n0 0 1\n"
                               "3 0 1 2\n3 0 1 2\n3 0 1 3\n3 1 0 2\n3 0 1 1\n");
    CHECK(file.mesh.facets ==
          std::vector<Facet>{{0, 1, 2}, {0, 1, 2}, {0, 1, 3}, {1, 0, 2}, {0, 1, 1}});
}
