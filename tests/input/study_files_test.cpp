#include "input/bad_files.h"
#include "input/file_digest.h"
#include "input/read_study.h"
#include "input/shipped_tables.h"
#include "input/small_study.h"

using namespace glim;
using namespace glim::test;

namespace {

const std::string own_table = R"(format = 1
regulation = "ours"
[[row]]
id = "own-row"
title = "ours"
provenance = "memory"
source = "these tests"
functions = ["front_indicator"]
field = { h = [-45, -45], v = [0, 0] }
criterion = { kind = "least_area", mm2 = 1250 }
approved_parts = "counted"
answered_by = "one_alone"
)";

const std::string outline = "v 0 -690 660\nv 0 -610 660\nv 0 -610 690\nv 0 -690 690\nl 1 2 3 4 1\n";

std::vector<std::string> names_of(const Study& study)
{
    std::vector<std::string> names;
    for (const SourceFile& file : study.files)
        names.push_back(file.file);
    return names;
}

} // namespace

TEST_CASE("a study names everything that was read for it, with its digest", "[input]")
{
    const TemporaryFolder folder;
    const std::string over = "format = 1\nbase = \"base/small.toml\"\n[[lamp]]\n"
                             "name = \"indicator\"\ntrim = { curve = \"outline.obj\" }\n";
    std::filesystem::create_directory(folder / "base");
    write(folder / "base/corner.obj", corner_obj);
    write(folder / "base/small.toml", small_study);
    write(folder / "outline.obj", outline);
    write(folder / "over.toml", over);
    const Study study = read_study(folder / "over.toml");
    CHECK(names_of(study) == std::vector<std::string>{"over.toml", "base/small.toml",
                                                      "base/corner.obj", "outline.obj",
                                                      "own-example.toml"});
    CHECK(study.files[0] == SourceFile{FileUse::study, "over.toml", identity_of(over)});
    CHECK(study.files[1].use == FileUse::base);
    CHECK(study.files[2] == SourceFile{FileUse::mesh, "base/corner.obj", identity_of(corner_obj)});
    CHECK(study.files[3] == SourceFile{FileUse::curve, "outline.obj", identity_of(outline)});
    CHECK(study.meshes[0].is == identity_of(corner_obj));
}

TEST_CASE("a table that comes with the program is known by the text that it carries", "[input]")
{
    const SourceFile table = study_of(small_study).files.back();
    CHECK(table.use == FileUse::shipped_table);
    for (const ShippedTable& shipped : shipped_tables())
        if (shipped.name == "own-example")
            CHECK(table.is == identity_of(shipped.text));
}

TEST_CASE("an own table is known by its file, and named once however often it is asked", "[input]")
{
    const TemporaryFolder folder;
    const std::string asked = with(with(small_study, "own-example", "own"), "across-45", "own-row");
    write(folder / "corner.obj", corner_obj);
    write(folder / "own.toml", own_table);
    write(folder / "study.toml", asked + "[[check]]\nname = \"again\"\ntable = \"own\"\n"
                                         "rule = \"own-row\"\nlamp = \"indicator\"\n");
    const Study study = read_study(folder / "study.toml");
    CHECK(names_of(study) == std::vector<std::string>{"study.toml", "corner.obj", "own.toml"});
    CHECK(study.files.back() == SourceFile{FileUse::table, "own.toml", identity_of(own_table)});
}
