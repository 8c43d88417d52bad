#include "machine/file_bytes.h"

#include "machine/temporary_folder.h"

#include <catch2/catch.hpp>

#include <sys/stat.h>
#include <unistd.h>

using namespace glim;
using namespace glim::test;

namespace {

constexpr std::size_t plenty = 100 << 20;

FileTrouble trouble_of(const std::filesystem::path& path, std::size_t most = plenty)
{
    return std::get<FileTrouble>(file_bytes(path, most));
}

std::string bytes_of(const std::filesystem::path& path, std::size_t most = plenty)
{
    return std::get<std::string>(file_bytes(path, most));
}

} // namespace

TEST_CASE("a file comes whole, every byte value, empty or of several chunks", "[machine]")
{
    const TemporaryFolder folder;
    std::string bytes;
    for (int i = 0; i < (3 << 20) + 17; ++i)
        bytes += static_cast<char>(i * 7 + i / 256);
    for (const std::size_t size :
         {std::size_t{0}, std::size_t{1}, std::size_t{1} << 20, bytes.size()}) {
        write(folder / "some file", bytes.substr(0, size));
        CHECK((bytes_of(folder / "some file") == bytes.substr(0, size)));
    }
}

TEST_CASE("a file may have as many bytes as allowed, and not one more", "[machine]")
{
    const TemporaryFolder folder;
    write(folder / "five", "12345");
    CHECK(bytes_of(folder / "five", 5) == "12345");
    CHECK(trouble_of(folder / "five", 4) == FileTrouble::too_large);
    CHECK(trouble_of(folder / "five", 0) == FileTrouble::too_large);
}

TEST_CASE("a path that leads to no ordinary file is told for what it is", "[machine]")
{
    const TemporaryFolder folder;
    write(folder / "file", "text");
    CHECK(trouble_of(folder / "nothing") == FileTrouble::missing);
    CHECK(trouble_of(folder / "file" / "below") == FileTrouble::missing);
    CHECK(trouble_of(folder / std::string(300, 'n')) == FileTrouble::missing);
    CHECK(trouble_of("") == FileTrouble::missing);
    CHECK(trouble_of(folder.path()) == FileTrouble::is_folder);
    CHECK(trouble_of("/dev/zero") == FileTrouble::not_a_file);
}

TEST_CASE("a pipe that nobody writes to does not hold the program up", "[machine]")
{
    const TemporaryFolder folder;
    REQUIRE(mkfifo((folder / "pipe").c_str(), 0600) == 0);
    CHECK(trouble_of(folder / "pipe") == FileTrouble::not_a_file);
}

TEST_CASE("a link is followed, and one that leads nowhere is missing", "[machine]")
{
    const TemporaryFolder folder;
    write(folder / "file", "text");
    std::filesystem::create_symlink(folder / "file", folder / "link");
    std::filesystem::create_symlink(folder / "gone", folder / "stale");
    CHECK(bytes_of(folder / "link") == "text");
    CHECK(trouble_of(folder / "stale") == FileTrouble::missing);
}

TEST_CASE("a file that may not be read is told so", "[machine]")
{
    const TemporaryFolder folder;
    write(folder / "closed", "text");
    std::filesystem::permissions(folder / "closed", std::filesystem::perms::none);
    if (access((folder / "closed").c_str(), R_OK) == 0)
        return; // the superuser may read everything
    CHECK(trouble_of(folder / "closed") == FileTrouble::not_allowed);
}
