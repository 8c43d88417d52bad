#include "app/run.h"
#include "machine/temporary_folder.h"

#include <catch2/catch.hpp>

#include <charconv>
#include <fstream>

using namespace glim;
using test::Ran;
using test::run;

namespace {

namespace fs = std::filesystem;

/// A folder with a space in its name that holds the studies of these tests.
class StudyFolder {
public:
    StudyFolder() { fs::copy(test::studies(), home.path(), fs::copy_options::recursive); }
    Ran in(const std::string& line) const { return run(line, home.path().string()); }
    fs::path operator/(const std::string& name) const { return home.path() / name; }

    test::TemporaryFolder home;
};

/// Width and height as a PNG's header has them (ISO/IEC 15948, 11.2.2).
std::pair<int, int> size_of_png(const std::string& bytes)
{
    const auto number = [&](std::size_t at) {
        int n = 0;
        for (std::size_t i = at; i < at + 4; ++i)
            n = n * 256 + static_cast<unsigned char>(bytes.at(i));
        return n;
    };
    return bytes.substr(1, 3) == "PNG" ? std::pair(number(16), number(20)) : std::pair(0, 0);
}

/// The number that stands before these words.
double area_before(const std::string& words, const std::string& text)
{
    const std::size_t end = text.find(words);
    const std::size_t from = text.rfind(' ', end - 1) + 1;
    double area = 0;
    std::from_chars(text.data() + from, text.data() + end, area);
    return area;
}

} // namespace

// The plate is 60 x 50 mm; the wall reaches 70 mm forward at 40 mm beside it, so that at H = -45
// half the plate is hidden: 3000 cos 45 / 2.
TEST_CASE("picture writes 800 by 500 pixels and tells what they show", "[app]")
{
    const StudyFolder folder;
    const Ran ran = folder.in("cornerglim picture walled.toml --toward -45,0");
    CHECK(ran.exit_code == 0);
    CHECK(area_before(" mm2 in view", ran.output) == Approx(1060.66).epsilon(0.001));
    CHECK(ran.output.find("hidden by wall") != std::string::npos);
    CHECK(ran.output.find("This informs; it does not certify.") != std::string::npos);
    CHECK(ran.errors.ends_with("Written: picture-indicator-H-45-V0.png\n"));
    const std::string png = test::read(folder / "picture-indicator-H-45-V0.png");
    CHECK(size_of_png(png) == std::pair(800, 500));

    CHECK(folder.in("cornerglim picture walled.toml --toward -45,0 --threads 1 --out b.png")
              .exit_code == 0);
    const bool same = test::read(folder / "b.png") == png;
    CHECK(same);
}

TEST_CASE("the far side has a picture of its own", "[app]")
{
    const StudyFolder folder;
    const Ran ran = folder.in("cornerglim picture walled.toml --toward 10,5 --far-side");
    CHECK(ran.exit_code == 0);
    CHECK(ran.output.find("indicator (mirrored) from 10 deg outboard, 5 deg up") !=
          std::string::npos);
    CHECK(fs::exists(folder / "picture-indicator-far-side-H10-V5.png"));
}

TEST_CASE("a study needs no checks to be pictured", "[app]")
{
    const StudyFolder folder;
    std::string study = test::read(folder / "clear.toml");
    const std::size_t from = study.find("[[check]]"), to = study.find("[sampling]");
    std::ofstream(folder / "unasked.toml") << study.substr(0, from) << study.substr(to);
    const Ran ran = folder.in("cornerglim picture unasked.toml --toward 0,0");
    CHECK(ran.exit_code == 0);
    CHECK(ran.output.find("3000 mm2 in view") != std::string::npos);
}

TEST_CASE("with several lamps one must be named, and a name nobody has brings the nearest", "[app]")
{
    const StudyFolder folder;
    const Ran unnamed = folder.in("cornerglim picture rear.toml --toward 0,0");
    CHECK(unnamed.exit_code == 2);
    CHECK(unnamed.errors.find("name `upper` or `lower`") != std::string::npos);
    const Ran misspelt = folder.in("cornerglim picture rear.toml --toward 0,0 --lamp uper");
    CHECK(misspelt.exit_code == 2);
    CHECK(misspelt.errors.find("did you mean `upper`?") != std::string::npos);
    const Ran named = folder.in("cornerglim picture rear.toml --toward 0,0 --lamp lower");
    CHECK(named.exit_code == 0);
    CHECK(named.output.find("lower from straight behind, level") != std::string::npos);
}

TEST_CASE("a folder is not written over by a picture", "[app]")
{
    const StudyFolder folder;
    fs::create_directory(folder / "kept");
    const Ran ran = folder.in("cornerglim picture clear.toml --toward 0,0 --out kept");
    CHECK(ran.exit_code == 2);
    CHECK(fs::is_directory(folder / "kept"));
    CHECK(ran.errors.find("kept") != std::string::npos);
}

TEST_CASE("a picture makes way for a picture, and no other file does", "[app]")
{
    const StudyFolder folder;
    std::ofstream(folder / "notes.txt") << "mine";
    std::ofstream(folder / "nothing.png");
    std::ofstream(folder / "old.png", std::ios::binary) << "\x89PNG\r\n\x1a\nand no more";
    const std::string line = "cornerglim picture clear.toml --toward 0,0 --out ";
    for (const std::string file : {"clear.toml", "plate.obj", "notes.txt", "nothing.png"}) {
        INFO(file);
        const std::string before = test::read(folder / file);
        const Ran ran = folder.in(line + file);
        CHECK(ran.exit_code == 2);
        CHECK(ran.errors.find(file) != std::string::npos);
        CHECK(ran.errors.find("a picture to be replaced") != std::string::npos);
        const bool same = test::read(folder / file) == before;
        CHECK(same);
    }
    CHECK(folder.in(line + "plate.obj").errors.find("is a file that the study is read from") !=
          std::string::npos);
    CHECK(folder.in(line + "old.png").exit_code == 0);
    CHECK(size_of_png(test::read(folder / "old.png")) == std::pair(800, 500));
}

TEST_CASE("a picture tells what is doubtful about its study", "[app]")
{
    const StudyFolder folder;
    const Ran ran = folder.in("cornerglim picture walled.toml --toward 0,0");
    CHECK(ran.exit_code == 0);
    const std::size_t warning = ran.errors.find("Warning: walled.toml");
    CHECK(warning != std::string::npos);
    CHECK(warning < ran.errors.find("Written: "));
}
