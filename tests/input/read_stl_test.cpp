#include "input/read_stl.h"

#include "model/complaint.h"

#include <catch2/catch.hpp>

#include <bit>

using namespace glim;

namespace {

void append(std::string& bytes, std::uint32_t number)
{
    for (int i = 0; i < 4; ++i)
        bytes += static_cast<char>(number >> (8 * i));
}

void append(std::string& bytes, float number)
{
    append(bytes, std::bit_cast<std::uint32_t>(number));
}

/// Binary STL of these facets, nine coordinates each; the normals say the contrary of the corners.
std::string binary(const std::vector<std::array<float, 9>>& facets, std::string title = "")
{
    title.resize(80, '\0');
    std::string bytes = title;
    append(bytes, static_cast<std::uint32_t>(facets.size()));
    for (const auto& facet : facets) {
        for (const float x : {0.0F, 0.0F, -1.0F})
            append(bytes, x);
        for (const float x : facet)
            append(bytes, x);
        bytes += "\x2a\x01";
    }
    return bytes;
}

constexpr std::array<float, 9> lower{0, 0, 0, 1, 0, 0, 0, 1, 0};
constexpr std::array<float, 9> upper{1, 0, 0, 1, 1, 0, 0, 1, -0.0F};

std::string facet(const std::string& a, const std::string& b, const std::string& c)
{
    return "facet normal 0 0 1\nouter loop\nvertex " + a + "\nvertex " + b + "\nvertex " + c +
           "\nendloop\nendfacet\n";
}

const std::string lower_text = facet("0 0 0", "1 0 0", "0 1 0");
const std::string upper_text = facet("1 0 0", "1 1 0", "0 1 -0.0");

MeshFile read(const std::string& bytes) { return read_stl(bytes, "test.stl"); }

void expect_square(const MeshFile& file)
{
    CHECK(file.mesh.points == std::vector<Point>{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {1, 1, 0}});
    CHECK(file.mesh.facets == std::vector<Facet>{{0, 1, 2}, {1, 3, 2}});
    CHECK(file.points_in_file == 6);
    CHECK(file.polygons_in_file == 2);
}

} // namespace

TEST_CASE("binary facets are welded, wound as their corners say", "[input]")
{
    const MeshFile file = read(binary({lower, upper}));
    expect_square(file);
    CHECK(file.format == "STL (binary)");
    CHECK(file.parts == std::vector<MeshPart>{{}});
    CHECK(file.part_of_facet == std::vector<std::uint32_t>{0, 0});
    CHECK(file.decimals == 7);
}

TEST_CASE("a binary file is told by its size, however its title begins", "[input]")
{
    expect_square(read(binary({lower, upper}, "solid lens exported as text")));
    expect_square(read(binary({lower, upper}, "facet normal")));
    CHECK(looks_like_stl(binary({lower}, "v 1 2 3")));
    CHECK_FALSE(looks_like_stl(binary({lower}) + "x"));
}

TEST_CASE("a float is kept as it is", "[input]")
{
    const MeshFile file = read(binary({{0.1F, -1234.567F, 1e-30F, 1, 0, 0, 0, 1, 0}}));
    CHECK(file.mesh.points[0] == Point(double{0.1F}, double{-1234.567F}, double{1e-30F}));
}

TEST_CASE("text facets are welded, and a file may have several solids", "[input]")
{
    const MeshFile file = read("solid lens, left # 1 \n" + lower_text + "endsolid lens\n" +
                               "solid\n" + upper_text + "endsolid\n");
    expect_square(file);
    CHECK(file.format == "STL (ASCII)");
    CHECK(file.parts == std::vector<MeshPart>{{"", "lens, left # 1", ""}, {"", "", ""}});
    CHECK(file.part_of_facet == std::vector<std::uint32_t>{0, 1});
}

TEST_CASE("text may be in upper case, indented, with other line ends", "[input]")
{
    std::string text = "solid Name\n" + lower_text + upper_text + "endsolid Name\n";
    std::string loud, carriage;
    for (const char c : text)
        loud += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    for (const char c : text)
        carriage += c == '\n' ? "\r\n   \t" : std::string(1, c);
    expect_square(read(loud));
    CHECK(read(loud).parts[0].group == "NAME");
    expect_square(read(carriage));
    expect_square(read("\n \n" + text));
}

TEST_CASE("a solid of the same name goes on, and one without facets is no part", "[input]")
{
    const MeshFile file =
        read("solid a\n" + lower_text + "endsolid a\nsolid empty\nendsolid empty\nsolid a\n" +
             upper_text + "endsolid a\n");
    CHECK(file.parts.size() == 1);
    CHECK(file.part_of_facet == std::vector<std::uint32_t>{0, 0});
}

TEST_CASE("normals are not looked at, not even when they are no numbers", "[input]")
{
    std::string text = "solid a\n" + lower_text + "endsolid a\n";
    text.replace(text.find("0 0 1"), 5, "nan -nan(ind) x");
    CHECK(read(text).mesh.facets.size() == 1);
}

TEST_CASE("degenerate and duplicate facets are kept, in text and binary", "[input]")
{
    const std::array<float, 9> point{2, 2, 2, 2, 2, 2, 2, 2, 2};
    CHECK(read(binary({lower, lower, point})).mesh.facets ==
          std::vector<Facet>{{0, 1, 2}, {0, 1, 2}, {3, 3, 3}});
    CHECK(read("solid a\n" + lower_text + lower_text + facet("2 2 2", "2 2 2", "2 2 2") +
               "endsolid\n")
              .mesh.facets == std::vector<Facet>{{0, 1, 2}, {0, 1, 2}, {3, 3, 3}});
}

TEST_CASE("digits of text are counted", "[input]")
{
    CHECK(read("solid a\n" + facet("0 0 0", "1.2345 0 0", "0 1e-10 0") + "endsolid\n").decimals ==
          5);
}
