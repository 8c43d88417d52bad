#include "input/read_obj.h"

#include "model/complaint.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

constexpr const char* triangle = "v 0 0 0\nv 1 0 0\nv 0 1 0\n";

MeshFile read(const std::string& text) { return read_obj(text, "test.obj"); }

const std::vector<Facet> one_facet{{0, 1, 2}};

} // namespace

TEST_CASE("corners may be written in four ways, which are the same to the mesh", "[input]")
{
    for (const char* face : {"f 1 2 3", "f 1/7 2/8 3/9", "f 1//7 2//8 3//9", "f 1/1/1 2/2/2 3/3/3",
                             "f -3 -2 -1", "f -3/-1 -2/-1 -1/-1", "fo 1 2 3"}) {
        INFO(face);
        const MeshFile file = read(std::string(triangle) + face + "\n");
        CHECK(file.mesh.facets == one_facet);
        CHECK(file.mesh.points == std::vector<Point>{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}});
    }
}

TEST_CASE("numbers count backwards from the points above the face", "[input]")
{
    const MeshFile file = read(std::string(triangle) + "f -3 -2 -1\nv 5 5 5\nf -1 -4 -3\n");
    CHECK(file.mesh.facets == std::vector<Facet>{{0, 1, 2}, {3, 0, 1}});
}

TEST_CASE("a point may have a weight, a colour or both", "[input]")
{
    const MeshFile file = read("v 0 0 0 1\nv 1 0 0 0.5 0.5 0.5\nv 0 1 0 2 0.1 0.2 0.3\nf 1 2 3\n");
    CHECK(file.mesh.points == std::vector<Point>{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}});
}

TEST_CASE("the same mesh comes from any line end, joined lines and a byte order mark", "[input]")
{
    for (const char* text :
         {"v 0 0 0\r\nv 1 0 0\r\nv 0 1 0\r\nf 1 2 3\r\n", "v 0 0 0\rv 1 0 0\rv 0 1 0\rf 1 2 3",
          "\xef\xbb\xbfv 0 0 0\nv\t1 0 0 # right\n\n  v 0 1 0\n#f 1 1 1\nf 1 2 3",
          "v 0 \\\n 0 0\nv 1 0\\\r\n 0\nv 0 1 0\nf 1 \\\n2 \\\n3\n"}) {
        INFO(text);
        CHECK(read(text).mesh.facets == one_facet);
        CHECK(read(text).mesh.points == std::vector<Point>{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}});
    }
}

TEST_CASE("numbers are read to the last bit", "[input]")
{
    const MeshFile file = read("v 0.1 -1234.5678901234567 +1e-3\nv 1 0 0\nv 0 1 0\nf 1 2 3\n");
    CHECK(file.mesh.points[0] == Point(0.1, -1234.5678901234567, 1e-3));
    CHECK(file.decimals == 17);
}

TEST_CASE("names of objects, groups and materials go with their faces", "[input]")
{
    const MeshFile file =
        read(std::string(triangle) + "f 1 2 3\n"
                                     "o corner\ng lamp  left\nusemtl amber\nf 1 2 3\n"
                                     "g fascia\nf 1 2 3\n"
                                     "g lamp left\nf 1 2 3\n"
                                     "g\no\nusemtl\nf 1 2 3\n"
                                     "g never used\n");
    CHECK(file.parts == std::vector<MeshPart>{{"", "", ""},
                                              {"corner", "lamp left", "amber"},
                                              {"corner", "fascia", "amber"}});
    CHECK(file.part_of_facet == std::vector<std::uint32_t>{0, 1, 2, 1, 0});
}

TEST_CASE("other statements are passed over, and no library of materials is opened", "[input]")
{
    const MeshFile file = read(std::string("mtllib /nowhere/none.mtl\n") + triangle +
                               "vt 0 0\nvn 0 0 1\nvp 0.5\ns off\nl 1 2\np 1\nlod 3\n"
                               "usemap none\nf 1 2 3\n");
    CHECK(file.mesh.facets == one_facet);
}

TEST_CASE("free-form surfaces are counted, since what they would hide is missing", "[input]")
{
    const MeshFile file =
        read(std::string(triangle) + "f 1 2 3\ncstype bezier\ndeg 1 1\nsurf 0 1 0 1 1 2 3 3\n"
                                     "parm u 0 1\nparm v 0 1\nend\n");
    CHECK(file.curved_surfaces == 1);
    CHECK(file.mesh.facets.size() == 1);
}

TEST_CASE("polygons are cut into triangles, and counted as they were", "[input]")
{
    // An arrow head with its notch, which a fan from the first corner would fill.
    const MeshFile file = read("v 0 -2 0\nv 4 0 0\nv 0 2 0\nv 1 0 0\nf 1 2 3 4\nf 1 2 4\n");
    CHECK(file.polygons_in_file == 2);
    CHECK(file.mesh.facets.size() == 3);
    CHECK(file.part_of_facet.size() == 3);
    CHECK(in_mm2(area_of({file.mesh.points, {file.mesh.facets[0], file.mesh.facets[1]}})) ==
          Approx(6));
    CHECK(file.crossed_polygons == 0);
}

TEST_CASE("a polygon that crosses itself is kept as a fan, and counted", "[input]")
{
    const MeshFile file = read("v 0 0 0\nv 2 2 0\nv 2 0 0\nv 0 2 0\nf 1 2 3 4\n");
    CHECK(file.crossed_polygons == 1);
    CHECK(file.mesh.facets == std::vector<Facet>{{0, 1, 2}, {0, 2, 3}});
}

TEST_CASE("points are welded to the last bit, and unused ones go", "[input]")
{
    const MeshFile file = read("v 9 9 9\nv 0 0 0\nv 1 0 0\nv 0 1 0\nv 1 0 0\nv 1 1 0\nv -0 1 -0\n"
                               "f 2 3 4\nf 5 6 7\n");
    CHECK(file.points_in_file == 7);
    CHECK(file.mesh.points.size() == 4);
    CHECK(file.mesh.facets == std::vector<Facet>{{0, 1, 2}, {1, 3, 2}});
}

TEST_CASE("duplicate, degenerate and non-manifold faces are kept", "[input]")
{
    const MeshFile file = read(std::string(triangle) +
                               "v 0 0 1\nf 1 2 3\nf 1 2 3\nf 3 2 1\nf 1 1 2\nf 2 2 2\nf 1 2 4\n");
    CHECK(file.mesh.facets.size() == 6);
    CHECK(file.mesh.facets[3] == Facet{0, 0, 1});
}

TEST_CASE("a polygon of four thousand corners is cut, spiral or not", "[input]")
{
    std::string text;
    std::string face = "f";
    constexpr int half = 2048;
    for (int i = 0; i < 2 * half; ++i) {
        const int along = i < half ? i : 2 * half - 1 - i;
        text += "v " + std::to_string(along) + " " + std::to_string(i < half ? 0 : 1) + " 0\n";
        face += " " + std::to_string(i + 1);
    }
    const MeshFile file = read(text + face + "\n");
    CHECK(file.mesh.facets.size() == 2 * half - 2);
    CHECK(in_mm2(area_of(file.mesh)) == Approx(half - 1));
}

TEST_CASE("what begins with a statement of OBJ looks like it", "[input]")
{
    CHECK(looks_like_obj("\n# comment\nmtllib a.mtl\n"));
    CHECK_FALSE(looks_like_obj("solid a\n"));
    CHECK_FALSE(looks_like_obj("# comment only\n"));
    CHECK_FALSE(looks_like_obj(std::string_view("v 1 2\0", 6)));
}
