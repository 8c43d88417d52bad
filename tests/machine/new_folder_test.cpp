#include "machine/new_folder.h"

#include "machine/checksum.h"
#include "machine/temporary_folder.h"
#include "machine/whole_file.h"

#include <catch2/catch.hpp>

#include <stdexcept>

#include <unistd.h>

using namespace glim;
using glim::test::TemporaryFolder;
namespace fs = std::filesystem;

namespace {

void write_results(const fs::path& target, const std::string& file, const std::string& text)
{
    NewFolder results(target);
    results.put(file, text);
    results.commit();
}

/// Why a folder of results may not be written to `target`; empty if it may.
std::string refusal(const fs::path& target)
{
    try {
        const NewFolder results(target);
        return "";
    } catch (const WriteRefused& refused) {
        CHECK_FALSE(refused.remedy.empty());
        return refused.reason;
    }
}

/// Somebody who may write nowhere in particular, for a while; root may write everywhere.
class NotRoot {
public:
    NotRoot()
    {
        if (geteuid() == 0)
            REQUIRE(seteuid(nobody) == 0);
    }
    ~NotRoot() { (void)!seteuid(getuid()); }

private:
    static constexpr uid_t nobody = 65534;
};

/// Stands in another folder for a while.
class StandingIn {
public:
    explicit StandingIn(const fs::path& path) : before_(fs::current_path())
    {
        fs::current_path(path);
    }
    ~StandingIn() { fs::current_path(before_); }

private:
    fs::path before_;
};

} // namespace

TEST_CASE("a folder of results appears whole, with a marker that lists its files", "[machine]")
{
    const TemporaryFolder folder;
    const fs::path target = folder / "build/out";
    NewFolder results(target);
    results.put("z.json", "{}");
    results.put("pictures/front.svg", "<svg/>");
    CHECK_FALSE(fs::exists(folder / "build"));

    results.commit();
    CHECK(test::read(target / "z.json") == "{}");
    CHECK(test::read(target / "pictures/front.svg") == "<svg/>");
    CHECK(test::read(target / ".cornerglim") ==
          "# Files that cornerglim wrote here and may replace. Others it leaves alone.\n" +
              checksum_of("<svg/>") + "  pictures/front.svg\n" + checksum_of("{}") + "  z.json\n");
    CHECK(folder.entries() == 1);
}

TEST_CASE("without commit nothing has changed", "[machine]")
{
    const TemporaryFolder folder;
    write_results(folder / "out", "a", "old");
    {
        NewFolder results(folder / "out");
        results.put("a", "new");
        NewFolder elsewhere(folder / "not/yet/there");
        elsewhere.put("a", "new");
    }
    CHECK(test::read(folder / "out/a") == "old");
    CHECK(folder.entries() == 1);
}

TEST_CASE("a second run replaces the folder and nothing of the first is left", "[machine]")
{
    const TemporaryFolder folder;
    write_results(folder / "out", "sub/only in the first", "1");
    fs::permissions(folder / "out", fs::perms(0750));
    write_results(folder / "out", "second", "2");
    CHECK(test::read(folder / "out/second") == "2");
    CHECK_FALSE(fs::exists(folder / "out/sub"));
    CHECK(static_cast<unsigned>(fs::status(folder / "out").permissions()) == 0750);
    CHECK(folder.entries() == 1);
}

TEST_CASE("a file of ours that somebody has worked on is not replaced", "[machine]")
{
    const TemporaryFolder folder;
    write_results(folder / "out", "study.toml", "as written");
    test::write(folder / "out/study.toml", "by hand");
    CHECK_THROWS_AS(NewFolder(folder / "out"), WriteRefused);
    CHECK(test::read(folder / "out/study.toml") == "by hand");
    test::write(folder / "out/study.toml", "as written");
    CHECK_NOTHROW(NewFolder(folder / "out"));
}

TEST_CASE("what another command wrote is not replaced", "[machine]")
{
    const TemporaryFolder folder;
    NewFolder relief(folder / "out", "relief");
    relief.put("study.toml", "1");
    relief.commit();
    CHECK_THROWS_AS(NewFolder(folder / "out", "sight-lines"), WriteRefused);
    CHECK_NOTHROW(NewFolder(folder / "out", "relief"));
    CHECK(test::read(folder / "out/study.toml") == "1");
}

TEST_CASE("a marker without checksums still lists what may be replaced", "[machine]")
{
    const TemporaryFolder folder;
    fs::create_directory(folder / "out");
    test::write(folder / "out/old", "anything");
    test::write(
        folder / "out/.cornerglim",
        "# Files that cornerglim wrote here and may replace. Others it leaves alone.\nold\n");
    write_results(folder / "out", "new", "1");
    CHECK_FALSE(fs::exists(folder / "out/old"));
}

TEST_CASE("a folder of results may be empty and is known again", "[machine]")
{
    const TemporaryFolder folder;
    NewFolder(folder / "out").commit();
    write_results(folder / "out", "a", "x");
    CHECK(test::read(folder / "out/a") == "x");
}

TEST_CASE("an empty folder may be used, by a link too", "[machine]")
{
    const TemporaryFolder folder;
    fs::create_directory(folder / "real");
    fs::create_directory_symlink("real", folder / "link");
    write_results(folder / "link/", "a", "x");
    CHECK(fs::is_symlink(folder / "link"));
    CHECK(test::read(folder / "real/a") == "x");
    CHECK(folder.entries() == 2);
}

TEST_CASE("what is there and is no folder is refused", "[machine]")
{
    const TemporaryFolder folder;
    test::write(folder / "file", "mine");
    fs::create_symlink("nowhere", folder / "link");
    CHECK(refusal(folder / "file") == "is there already and is no folder");
    CHECK(refusal(folder / "link") == "is there already and is no folder");
    CHECK(refusal(folder / "file/out") ==
          "lies below " + (folder / "file").string() + ", which is no folder");
    CHECK(refusal("") == "no folder is named");
    CHECK(test::read(folder / "file") == "mine");
}

TEST_CASE("a folder with files of somebody else is refused, with the marker or without",
          "[machine]")
{
    const TemporaryFolder folder;
    test::write(folder / "home/notes.txt", "mine");
    CHECK(refusal(folder / "home") == "holds `notes.txt`, which was not written by this program");

    write_results(folder / "out", "sub/a", "x");
    test::write(folder / "out/sub/notes.txt", "mine");
    CHECK(refusal(folder / "out") ==
          "holds `sub/notes.txt`, which was not written by this program");
    CHECK(test::read(folder / "out/sub/a") == "x");
    CHECK(folder.entries() == 2);
}

TEST_CASE("a marker of another hand is no marker", "[machine]")
{
    const TemporaryFolder folder;
    test::write(folder / "out/.cornerglim", "a\n");
    test::write(folder / "out/a", "mine");
    CHECK(refusal(folder / "out") == "holds `.cornerglim`, which was not written by this program");
}

TEST_CASE("a file that somebody adds while we work is not lost", "[machine]")
{
    const TemporaryFolder folder;
    write_results(folder / "out", "a", "old");
    {
        NewFolder results(folder / "out");
        results.put("a", "new");
        test::write(folder / "out/notes.txt", "mine");
        CHECK_THROWS_AS(results.commit(), WriteRefused);
    }
    CHECK(test::read(folder / "out/notes.txt") == "mine");
    CHECK(test::read(folder / "out/a") == "old");
    CHECK(folder.entries() == 1);
}

TEST_CASE("the folder one stands in is refused, and so is one above it", "[machine]")
{
    const TemporaryFolder folder;
    fs::create_directories(folder / "a/b");
    const StandingIn inside(folder / "a/b");
    CHECK(refusal(".") == "is the folder you are in, or one above it");
    CHECK(refusal("..") == "is the folder you are in, or one above it");
    CHECK(refusal("/") == "is the folder you are in, or one above it");
    CHECK(refusal("out") == "");
}

TEST_CASE("no name leads out of the folder", "[machine]")
{
    const TemporaryFolder folder;
    NewFolder results(folder / "out");
    results.put("a", "x");
    for (const char* name : {"", "/etc/x", "../x", "b/../../x", "b/./c", "b//c", "b/", ".",
                             "two\nlines", "#x", ".cornerglim", "a"})
        CHECK_THROWS_AS(results.put(name, "x"), std::invalid_argument);
}

TEST_CASE("a folder where nothing may be written is refused before the work", "[machine]")
{
    const TemporaryFolder folder;
    fs::create_directory(folder.path() / "closed");
    fs::permissions(folder.path(), fs::perms(0755));
    fs::permissions(folder.path() / "closed", fs::perms(0555));
    const NotRoot somebody;
    CHECK(refusal(folder.path() / "closed" / "out").find("nothing may be written in") !=
          std::string::npos);
}
