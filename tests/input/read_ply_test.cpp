#include "input/read_ply.h"

#include "model/complaint.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <bit>

using namespace glim;

namespace {

MeshFile read(const std::string& bytes) { return read_ply(bytes, "test.ply"); }

/// A square of two triangles in text, with lines of the header added before the points' and before
/// the faces' own, and columns to match.
std::string text_square(const std::string& point_property = "",
                        const std::string& point_column = "", const std::string& face_property = "",
                        const std::string& first_column = "", const std::string& second_column = "")
{
    return "ply\nformat ascii 1.0\ncomment a square\nelement vertex 4\n" + point_property +
           "property float x\nproperty float y\nproperty float z\nelement face 2\n" +
           face_property + "property list uchar int vertex_indices\nend_header\n" + point_column +
           "0 0 0\n" + point_column + "1 0 0\n" + point_column + "1 1 0\n" + point_column +
           "0 1 -0.0\n" + first_column + "3 0 1 3\n" + second_column + "3 1 2 3\n";
}

void append(std::string& bytes, std::uint64_t number, std::size_t size, bool big)
{
    for (std::size_t i = 0; i < size; ++i)
        bytes += static_cast<char>(number >> (8 * (big ? size - 1 - i : i)));
}

/// The same square as binary: doubles, a flag before the corners and a list behind them.
std::string binary_square(bool big)
{
    std::string bytes = std::string("ply\nformat binary_") + (big ? "big" : "little") +
                        "_endian 1.0\nelement vertex 4\nproperty double x\nproperty double y\n"
                        "property double z\nproperty uchar red\nelement face 2\n"
                        "property short flags\nproperty list uchar uint vertex_index\n"
                        "property list ushort float texture\nend_header\n";
    const std::vector<Point> corners = {{0, 0, 0}, {1, 0, 0}, {1, 1, 0}, {0, 1, 0}};
    for (const Point& p : corners) {
        for (const double x : p)
            append(bytes, std::bit_cast<std::uint64_t>(x), 8, big);
        bytes += '\x2a';
    }
    for (const auto& facet : {std::array{0, 1, 3}, std::array{1, 2, 3}}) {
        append(bytes, 0xfffe, 2, big); // -2
        bytes += '\x03';
        for (const int corner : facet)
            append(bytes, static_cast<std::uint64_t>(corner), 4, big);
        append(bytes, 1, 2, big);
        append(bytes, std::bit_cast<std::uint32_t>(0.5F), 4, big);
    }
    return bytes;
}

void expect_square(const MeshFile& file)
{
    CHECK(file.mesh.points == std::vector<Point>{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {1, 1, 0}});
    CHECK(file.mesh.facets == std::vector<Facet>{{0, 1, 2}, {1, 3, 2}});
    CHECK(file.points_in_file == 4);
    CHECK(file.polygons_in_file == 2);
}

std::string replaced(std::string text, const std::string& from, const std::string& to)
{
    for (std::size_t at = text.find(from); at != std::string::npos;
         at = text.find(from, at + to.size()))
        text.replace(at, from.size(), to);
    return text;
}

} // namespace

TEST_CASE("text and binary of either byte order give the same square", "[input]")
{
    expect_square(read(text_square()));
    expect_square(read(binary_square(false)));
    expect_square(read(binary_square(true)));
    CHECK(read(text_square()).format == "PLY (ASCII)");
    CHECK(read(binary_square(false)).format == "PLY (binary, little-endian)");
    CHECK(read(binary_square(true)).format == "PLY (binary, big-endian)");
}

// OpenMesh 9 reads each of these wrongly and says that all is well.
TEST_CASE("properties that are not used are passed over wherever they stand", "[input]")
{
    expect_square(read(text_square("property list uchar int neighbours\n", "2 7 8 ")));
    expect_square(read(text_square("property uchar red\nproperty float nx\n", "255 nan ")));
    expect_square(read(text_square("", "", "property float quality\n", "0.5 ", "0.25 ")));
    const std::string edges = replaced(text_square(), "end_header\n",
                                       "element edge 1\nproperty int a\nproperty int b\n"
                                       "end_header\n");
    expect_square(read(edges + "0 1\n"));
    const std::string before = replaced(text_square(), "element vertex",
                                        "element camera 1\nproperty list int float view\n"
                                        "element vertex");
    expect_square(read(replaced(before, "end_header\n", "end_header\n2 0.5 0.5\n")));
}

TEST_CASE("a whole number at each face names its part", "[input]")
{
    const MeshFile parted =
        read(text_square("", "", "property uchar red\nproperty int piece\n", "255 7 ", "255 -9 "));
    expect_square(parted);
    CHECK(parted.parts == std::vector<MeshPart>{{"", "piece 7", ""}, {"", "piece -9", ""}});
    CHECK(parted.part_of_facet == std::vector<std::uint32_t>{0, 1});
    CHECK(read(binary_square(true)).parts == std::vector<MeshPart>{{"", "flags -2", ""}});
    CHECK(read(text_square()).parts == std::vector<MeshPart>{{}});
}

TEST_CASE("lines of a PLY file may end in any of three ways", "[input]")
{
    expect_square(read(replaced(text_square(), "\n", "\r\n")));
    expect_square(read(replaced(text_square(), "\n", "\r")));
    // After the header's CR LF the data of a binary file begin at once.
    const std::string binary = binary_square(false);
    const std::size_t header = binary.find("end_header\n") + 11;
    expect_square(read(replaced(binary.substr(0, header), "\n", "\r\n") + binary.substr(header)));
}

// A half-edge mesh could hold none of these faces.
TEST_CASE("degenerate, duplicate and crowded faces are all kept", "[input]")
{
    const std::string text = "ply\nformat ascii 1.0\nelement vertex 5\nproperty float x\n"
                             "property float y\nproperty float z\nelement face 6\n"
                             "property list uchar int vertex_indices\nend_header\n"
                             "0 0 0\n1 0 0\n0 1 0\n0 -1 0\n0 0 1\n"
                             "3 0 1 2\n3 0 1 2\n3 2 1 0\n3 0 1 4\n3 0 1 3\n3 0 1 1\n";
    const MeshFile file = read(text);
    CHECK(file.mesh.facets ==
          std::vector<Facet>{{0, 1, 2}, {0, 1, 2}, {2, 1, 0}, {0, 1, 3}, {0, 1, 4}, {0, 1, 1}});
}

TEST_CASE("polygons are cut, and points without a face are gone", "[input]")
{
    const std::string text = "ply\nformat ascii 1.0\nelement vertex 5\nproperty float x\n"
                             "property float y\nproperty float z\nelement face 1\n"
                             "property list uchar int vertex_indices\nend_header\n"
                             "9 9 9\n0 0 0\n2 0 0\n2 1 0\n0 1 0\n4 1 2 3 4\n";
    const MeshFile file = read(text);
    CHECK(file.mesh.facets.size() == 2);
    CHECK(file.mesh.points.size() == 4);
    CHECK(in_mm2(area_of(file.mesh)) == 2);
    CHECK(file.points_in_file == 5);
    CHECK(file.polygons_in_file == 1);
}

TEST_CASE("a float is kept as it is, a double to a float's seven digits", "[input]")
{
    std::string text = replaced(text_square(), "1 0 0\n", "1234.56789012 0 0\n");
    CHECK(read(text).mesh.points[1].x() == double{1234.56789012F});
    text = replaced(text_square(), "1 0 0\n", "0.1 0 0\n");
    CHECK(read(text).mesh.points[1].x() == double{0.1F});
    CHECK(read(text).decimals == 7);
}
