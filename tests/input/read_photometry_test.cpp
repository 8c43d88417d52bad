#include "input/read_photometry.h"

#include "input/bad_files.h"

using namespace glim;
using namespace glim::test;

namespace {

constexpr std::size_t least_bad_files = 30;

const std::string text = "IESNA:LM-63-2002\nTILT=factors.tlt\n1 -1 1 2 1 1 2 0 0 0 1 1 1\n0 90\n0\n"
                         "3 4\n";

std::string complaints_about(const std::filesystem::path& file)
{
    return complaints_of([&] { read_photometry(file, file.filename().string()); });
}

} // namespace

TEST_CASE("every malformed photometric file gives exactly its complaints", "[input]")
{
    const std::filesystem::path folder = GLIM_SOURCE_DIR "/tests/bad/photometry";
    const WorkingFolder here(folder);
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(".")) {
        const std::filesystem::path file = entry.path().filename();
        INFO(file.string());
        if (file.extension() == ".expected")
            CHECK(std::filesystem::exists(file.stem()));
        if (!names_photometry(file))
            continue;
        ++files;
        CHECK(complaints_about(file) == read(file.string() + ".expected"));
    }
    CHECK(files >= least_bad_files);
}

TEST_CASE("the ending tells a photometric file, in upper case too", "[input]")
{
    CHECK(names_photometry("a lamp.IES"));
    CHECK(names_photometry("lamp.v2.ldt"));
    CHECK_FALSE(names_photometry("lamp.obj"));
    CHECK_FALSE(names_photometry("ies"));
}

TEST_CASE("a file of TILT factors is looked for beside its file and nowhere else", "[input]")
{
    const TemporaryFolder folder;
    std::filesystem::create_directory(folder / "inner");
    write(folder / "factors.tlt", "1 2 0 90 1 1");
    write(folder / "lamp.ies", text);
    // Of the factors, and of the keywords that the file does not have.
    CHECK(read_photometry(folder / "lamp.ies", "lamp.ies").warnings.size() == 2);
    std::string elsewhere = text;
    elsewhere.replace(elsewhere.find("factors.tlt"), 11, "../factors.tlt");
    write(folder / "inner" / "lamp.ies", elsewhere);
    CHECK(complaints_about(folder / "inner" / "lamp.ies") ==
          "lamp.ies:2:6: there is no file `../factors.tlt` beside this one\n"
          "    put it there, or write TILT=NONE if the lamp burns as measured\n");
}

TEST_CASE("what is no photometric file at all is told so", "[input]")
{
    const TemporaryFolder folder;
    write(folder / "empty.ies", "");
    write(folder / "zeros.ldt", std::string(40, '\0'));
    CHECK(complaints_about(folder / "empty.ies") ==
          "empty.ies: this file is empty\n    copy or export it again\n");
    CHECK(complaints_about(folder / "zeros.ldt") ==
          "zeros.ldt: this is no text, and so no photometric file\n"
          "    name the LM-63 or EULUMDAT file itself\n");
    CHECK(complaints_about(folder / "lamp.obj") ==
          "lamp.obj: the name of a photometric file ends in `.ies` or `.ldt`\n"
          "    export it as one of them\n");
}
