#include "report/study_overlay.h"

#include "machine/temporary_folder.h"

#include <catch2/catch.hpp>

using namespace glim;
using test::TemporaryFolder;
using test::write;

TEST_CASE("an overlay names its base from the folder that it will stand in", "[report]")
{
    const StudyOverlay overlay{"themes/a \"1\".toml", "relieved"};
    CHECK(overlay_text(overlay, "out/relief") ==
          "format = 1\nbase = \"../../themes/a \\\"1\\\".toml\"\ntitle = \"relieved\"\n");
}

TEST_CASE("an overlay writes its tables in order, below what it says of itself", "[report]")
{
    Surface nose;
    nose.name = "nose";
    nose.chord = {millimetres(0.05), true};
    const StudyOverlay overlay{
        "a.toml",
        "relieved",
        {"one line"},
        {reshaped_surface(nose, "nose.obj"), {"relief", false, {{"spare", "2"}}}}};
    CHECK(overlay_text(overlay, ".") ==
          "# one line\n\nformat = 1\nbase = \"a.toml\"\ntitle = \"relieved\"\n"
          "\n[[surface]]\nname = \"nose\"\nreshaped = \"nose.obj\"\nchord = "
          "0.05\n\n[relief]\nspare = 2\n");
}

TEST_CASE("a base that is there is named from a folder that is not there yet", "[report]")
{
    const TemporaryFolder folder;
    write(folder / "a.toml", "format = 1\n");
    const std::string text = overlay_text({folder / "a.toml", "relieved"}, folder / "new/out");
    CHECK(text.find("base = \"../../a.toml\"\n") != std::string::npos);
}
