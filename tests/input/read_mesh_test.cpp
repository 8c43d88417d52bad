#include "input/read_mesh.h"

#include "input/bad_files.h"
#include "input/mesh_formats.h"

using namespace glim;
using namespace glim::test;

namespace {

constexpr std::size_t least_bad_meshes = 90;

constexpr const char* obj_text = "v 0 0 0\nv 1 0 0\nv 0 1 0\nf 1 2 3\n";
constexpr const char* stl_text = "solid a\nfacet normal 0 0 1\nouter loop\nvertex 0 0 0\n"
                                 "vertex 1 0 0\nvertex 0 1 0\nendloop\nendfacet\nendsolid a\n";

std::string complaints_about(const std::filesystem::path& file)
{
    return complaints_of([&] { read_mesh(file, file.filename().string()); });
}

std::vector<std::filesystem::path> files_below(const std::filesystem::path& folder)
{
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder))
        if (entry.is_regular_file())
            files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    return files;
}

} // namespace

TEST_CASE("every malformed mesh gives exactly its complaints", "[input]")
{
    std::size_t meshes = 0;
    for (const auto& file : files_below(GLIM_SOURCE_DIR "/tests/bad/meshes")) {
        INFO(file.string());
        if (file.extension() == ".expected") {
            CHECK(std::filesystem::exists(file.parent_path() / file.stem()));
            continue;
        }
        ++meshes;
        CHECK(complaints_about(file) == read(file.string() + ".expected"));
    }
    CHECK(meshes >= least_bad_meshes);
}

TEST_CASE("the ending tells the format, in upper case too", "[input]")
{
    const TemporaryFolder folder;
    write(folder / "a lens.OBJ", obj_text);
    write(folder / "lens.v2.Stl", stl_text);
    CHECK(read_mesh(folder / "a lens.OBJ", "").format == "OBJ");
    CHECK(read_mesh(folder / "lens.v2.Stl", "").format == "STL (ASCII)");
}

TEST_CASE("a complaint calls the file as it was told to", "[input]")
{
    const TemporaryFolder folder;
    write(folder / "lens.obj", "v 0 0\n");
    CHECK(complaints_of([&] {
              read_mesh(folder / "lens.obj", "parts/lens.obj");
          }).starts_with("parts/lens.obj:1:1: "));
}

TEST_CASE("a file that is not there is complained of, with the one that was meant", "[input]")
{
    const TemporaryFolder folder;
    write(folder / "lens-left.obj", obj_text);
    CHECK(complaints_about(folder / "lens-lfet.obj") ==
          "lens-lfet.obj: there is no such file\n    did you mean `lens-left.obj`?\n");
    CHECK(complaints_about(folder / "x.obj") ==
          "x.obj: there is no such file\n    put it there, or correct the name\n");
}

TEST_CASE("a folder is no mesh, and neither is a device", "[input]")
{
    const TemporaryFolder folder;
    std::filesystem::create_directory(folder / "parts.obj");
    CHECK(complaints_about(folder / "parts.obj") ==
          "parts.obj: this is a folder\n    name a mesh file in it\n");
    CHECK(complaints_about("/dev/null") ==
          "null: this is no ordinary file\n    save the mesh as a file first\n");
}

TEST_CASE("a file larger than two gibibytes is refused unread", "[input]")
{
    const TemporaryFolder folder;
    write(folder / "huge.obj", "v 0 0 0\n");
    // A file with a hole takes no room on the disk.
    std::filesystem::resize_file(folder / "huge.obj", std::uintmax_t{1} << 31);
    CHECK(complaints_about(folder / "huge.obj") ==
          "huge.obj: this file is larger than 2 GiB\n"
          "    export only the parts near the lamps, or more coarsely\n");
}

TEST_CASE("the manual tells of every format what it carries", "[input]")
{
    const std::string manual = read(GLIM_SOURCE_DIR "/docs/mesh-formats.md");
    CHECK(mesh_formats().size() == 4);
    for (const MeshFormat& format : mesh_formats()) {
        CHECK(manual.find("`" + std::string(format.ending) + "`") != std::string::npos);
        CHECK(manual.find(format.carries) != std::string::npos);
    }
}
