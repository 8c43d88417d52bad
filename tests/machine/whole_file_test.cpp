#include "machine/whole_file.h"

#include "machine/file_size_limit.h"
#include "machine/temporary_folder.h"

#include <catch2/catch.hpp>

#include <system_error>

#include <sys/stat.h>

using namespace glim;
using glim::test::TemporaryFolder;
namespace fs = std::filesystem;

namespace {

/// Until it goes out of scope, new files get no more than this leaves.
class Umask {
public:
    explicit Umask(mode_t mask) : before_(umask(mask)) {}
    ~Umask() { umask(before_); }

private:
    mode_t before_;
};

unsigned mode(const fs::path& path)
{
    return static_cast<unsigned>(fs::status(path).permissions());
}

} // namespace

TEST_CASE("a new file has the bytes given, zeros and line ends included", "[machine]")
{
    const TemporaryFolder folder;
    const std::string bytes("a\0b\r\n\xff", 6);
    write_new_file(folder / "f", bytes);
    CHECK(test::read(folder / "f") == bytes);
}

TEST_CASE("a new file never overwrites", "[machine]")
{
    const TemporaryFolder folder;
    test::write(folder / "f", "old");
    CHECK_THROWS_AS(write_new_file(folder / "f", "new"), std::system_error);
    CHECK(test::read(folder / "f") == "old");
}

TEST_CASE("a write that fails half way is told with the file's name and leaves nothing",
          "[machine]")
{
    const TemporaryFolder folder;
    const test::FileSizeLimit limit(1000);
    CHECK_THROWS_WITH(write_new_file(folder / "f", std::string(2000, 'x')),
                      Catch::Contains("cannot write " + (folder / "f").string()));
    CHECK_THROWS_AS(write_file_atomically(folder / "g", std::string(2000, 'x')), std::system_error);
    CHECK(folder.entries() == 0);
}

TEST_CASE("permissions are what the umask leaves", "[machine]")
{
    const TemporaryFolder folder;
    const Umask umask(027);
    write_file_atomically(folder / "f", "x");
    CHECK(mode(folder / "f") == 0640);
}

TEST_CASE("writing a file whole makes the folders above it", "[machine]")
{
    const TemporaryFolder folder;
    write_file_atomically(folder / "a/b/f.csv", "x");
    CHECK(test::read(folder / "a/b/f.csv") == "x");
}

TEST_CASE("an existing file stays unless told otherwise", "[machine]")
{
    const TemporaryFolder folder;
    test::write(folder / "f", "old");
    CHECK_THROWS_AS(write_file_atomically(folder / "f", "new"), WriteRefused);
    CHECK(test::read(folder / "f") == "old");

    fs::permissions(folder / "f", fs::perms(0604));
    write_file_atomically(folder / "f", "new", IfThere::replace);
    CHECK(test::read(folder / "f") == "new");
    CHECK(mode(folder / "f") == 0604);
    CHECK(folder.entries() == 1);
}

TEST_CASE("replacing through a link keeps the link", "[machine]")
{
    const TemporaryFolder folder;
    test::write(folder / "real", "old");
    fs::create_symlink("real", folder / "link");
    write_file_atomically(folder / "link", "new", IfThere::replace);
    CHECK(fs::is_symlink(folder / "link"));
    CHECK(test::read(folder / "real") == "new");
}

TEST_CASE("a folder is not replaced by a file", "[machine]")
{
    const TemporaryFolder folder;
    fs::create_directory(folder / "d");
    CHECK_THROWS_AS(write_file_atomically(folder / "d", "x", IfThere::replace), WriteRefused);
    CHECK(fs::is_directory(folder / "d"));
}

TEST_CASE("a place below a file is refused with a reason and a remedy", "[machine]")
{
    const TemporaryFolder folder;
    test::write(folder / "f", "old");
    try {
        write_file_atomically(folder / "f/g/h", "x");
        FAIL("not refused");
    } catch (const WriteRefused& refusal) {
        CHECK(refusal.path == folder / "f/g/h");
        CHECK(refusal.reason == "lies below " + (folder / "f").string() + ", which is no folder");
        CHECK(refusal.remedy == "name a place inside a folder");
    }
    CHECK(folder.entries() == 1);
}

TEST_CASE("a free path is beside and is taken by nobody", "[machine]")
{
    const TemporaryFolder folder;
    const fs::path first = free_path_beside(folder / "f");
    CHECK(first.parent_path() == folder.path());
    CHECK(first.filename().string().starts_with(".f."));
    test::write(first, "x");
    CHECK(free_path_beside(folder / "f") != first);
}
