#include "generator/demo_files.h"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <string>

namespace {

namespace fs = std::filesystem;

std::string bytes_of(const fs::path& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

std::map<std::string, std::string> meshes_in(const fs::path& folder)
{
    std::map<std::string, std::string> files;
    for (const fs::directory_entry& entry : fs::directory_iterator(folder))
        if (entry.path().extension() == ".obj" || entry.path().extension() == ".ies")
            files[entry.path().filename().string()] = bytes_of(entry.path());
    return files;
}

const fs::path committed = fs::path(GLIM_SOURCE_DIR) / "meshes" / "demo";

/// Removes itself.
class Folder {
public:
    Folder() : path_(fs::path(GLIM_BINARY_DIR) / "demo test folder") { fs::remove_all(path_); }
    ~Folder() { fs::remove_all(path_); }
    const fs::path& path() const { return path_; }

private:
    fs::path path_;
};

TEST_CASE("make_demo_corner writes the committed demo meshes, byte by byte", "[demo]")
{
    const Folder folder;
    const std::string command =
        "'" + std::string(MAKE_DEMO_CORNER) + "' '" + folder.path().string() + "'";
    REQUIRE(std::system(command.c_str()) == 0);
    const auto written = meshes_in(folder.path());
    const auto kept = meshes_in(committed);
    REQUIRE(written.size() == 10);
    REQUIRE(kept.size() == written.size());
    for (const auto& [name, text] : written) {
        INFO(name << ": if the change is meant, run make_demo_corner meshes/demo");
        REQUIRE(kept.contains(name));
        // Not CHECK(a == b): half a megabyte would be printed.
        CHECK((kept.at(name) == text));
    }
}

TEST_CASE("the demo's mesh files stay below 6 MB together", "[demo]")
{
    std::size_t sum = 0;
    for (const auto& [name, text] : meshes_in(committed))
        sum += text.size();
    CHECK(sum > 100'000);
    CHECK(sum < 6'000'000);
}

} // namespace
