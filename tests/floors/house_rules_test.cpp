#include "floors/house_rules.h"

#include "machine/temporary_folder.h"

#include <catch2/catch.hpp>

using namespace glim::test;
using Findings = std::vector<std::string>;

namespace {

const std::filesystem::path checkout = GLIM_SOURCE_DIR;

} // namespace

TEST_CASE("the top of the tree holds what is meant to be there, and nothing else", "[floors]")
{
    const auto tracked = tracked_paths(checkout);
    if (!tracked) {
        SUCCEED("not a git checkout: nobody says what belongs to it");
        return;
    }
    CHECK(wrong_top_entries(*tracked) == Findings{});
}

TEST_CASE("an entry too many or too few at the top is found", "[floors]")
{
    CHECK(wrong_top_entries({".gitignore", ".ci/run", "CMakeLists.txt", "README.md",
                             "DEVELOPERS.md", "src/app/main.cpp", "tests/run.sh", "meshes/demo.sh",
                             "requirements-tables/a.toml", "docs/a.md"}) == Findings{});
    CHECK(wrong_top_entries({"CMakeLists.txt", "README.md", "DEVELOPERS.md", "src/app/main.cpp",
                             "tests/run.sh", "meshes/demo.sh", "scripts/a.sh", "docs/a.md"}) ==
          Findings{"scripts should not stand at the top",
                   "requirements-tables is missing at the top"});
}

TEST_CASE("a folder that git does not know has no tracked paths", "[floors]")
{
    const TemporaryFolder folder;
    CHECK_FALSE(tracked_paths(folder.path()));
    CHECK_FALSE(tracked_paths(checkout / "src"));
}

TEST_CASE("no file of C++ is longer than one idea needs", "[floors]")
{
    CHECK(long_files(checkout / "src") == Findings{});
    CHECK(long_files(checkout / "tests") == Findings{});
    CHECK(long_files(checkout / "meshes") == Findings{});
}

TEST_CASE("a file with a line too many is found", "[floors]")
{
    const TemporaryFolder folder;
    const auto lines = [](int count) { return std::string(static_cast<std::size_t>(count), '\n'); };
    write(folder / "model/just.h", lines(most_lines));
    write(folder / "model/long.cpp", lines(most_lines + 1));
    write(folder / "model/table.toml", lines(most_lines + 1));
    CHECK(long_files(folder.path()) == Findings{"model/long.cpp has 401 lines"});
}

TEST_CASE("no two headers define a type of one name", "[floors]")
{
    CHECK(twice_defined(checkout / "src") == Findings{});
}

TEST_CASE("a type that two headers define is found", "[floors]")
{
    const TemporaryFolder folder;
    write(folder / "judgement/place.h", "struct Place {\n    struct Inner {\n    };\n};\n"
                                        "enum class Kind { a, b };\nclass Walk final : Base {};\n");
    write(folder / "report/place.h", "struct Other {\n    struct Inner {\n    };\n};\n"
                                     "struct Place;\ntemplate <>\nstruct Place<int> {\n};\n");
    CHECK(twice_defined(folder.path()) == Findings{});
    write(folder / "report/charts.h", "struct Place {\n};\nenum class Kind : int { c };\n"
                                      "class Walk\n{\n};\n");
    write(folder / "report/charts.cpp", "struct Other {\n};\n");
    CHECK(twice_defined(folder.path()) ==
          Findings{"report/charts.h: Place is in judgement/place.h too",
                   "report/charts.h: Kind is in judgement/place.h too",
                   "report/charts.h: Walk is in judgement/place.h too"});
}

TEST_CASE("every test has a name under which it is run", "[floors]")
{
    CHECK(bad_test_names(checkout / "tests") == Findings{});
}

TEST_CASE("a test name that is not carried through is found", "[floors]")
{
    const TemporaryFolder folder;
    const auto test = [](const char* name) {
        return std::string("TEST_CASE(") + "\"" + name + "\", \"[x]\") {}\n";
    };
    write(folder / "a_test.cpp", test("a - b, \\\"c\\\"") + test("a; b"));
    write(folder / "b_test.cpp", "TEST_CASE(\n    \"--quiet is quiet\")\n{\n}\n");
    CHECK(bad_test_names(folder.path()) ==
          Findings{"a_test.cpp: a; b", "b_test.cpp: --quiet is quiet"});
}
