#include "input/read_reshaped.h"

#include "input/bad_files.h"
#include "input/small_study.h"

using namespace glim;
using namespace glim::test;

namespace {

constexpr std::string_view one_facet = "v -790 -10 300\nv -790 0 300\nv -790 0 800\nf 1 2 3\n";

/// The small front, whose nose has the shape that `new.obj` gives it.
Study reshaped_study(const std::string& surface_keys, const std::string& name = "new.obj")
{
    const TemporaryFolder folder;
    write(folder / "corner.obj", corner_obj);
    write(folder / "new.obj", std::string(one_facet));
    write(folder / "study.toml", std::string(small_study) +
                                     "\n[[surface]]\nname = \"nose\"\n"
                                     "mesh = \"corner\"\nmirror = \"yes\"\nreshaped = \"" +
                                     name + "\"\n" + surface_keys);
    return read_study(folder / "study.toml");
}

} // namespace

TEST_CASE("a reshaped surface takes its facets, and another shape in their place", "[input]")
{
    const Study study = reshaped_study("select = { object = \"nose\" }\n");
    const Surface& nose = study.surfaces[SurfaceId{1}];
    CHECK(nose.name == "nose");
    REQUIRE(nose.mesh.facets.size() == 1);
    CHECK(nose.mesh.points[0] == Point(-790, -10, 300));
    // The facets it took are no rest that would stand in the way as drawn: only shell and plate
    // are.
    CHECK(study.surfaces[SurfaceId{2}].name == "rest of corner");
    CHECK(study.surfaces[SurfaceId{2}].mesh.facets.size() == 14);
}

TEST_CASE("the file of a reshaped surface is told among those that were read", "[input]")
{
    const Study study = reshaped_study("select = { object = \"nose\" }\n");
    CHECK(std::ranges::any_of(study.files, [](const SourceFile& file) {
        return file.use == FileUse::mesh && file.file == "new.obj" && !file.is.sha256.empty();
    }));
}

TEST_CASE("a shape that is not there is told with its place", "[input]")
{
    const std::string said =
        complaints_of([] { reshaped_study("select = { object = \"nose\" }\n", "old.obj"); });
    CHECK(said.find("there is no file `") != std::string::npos);
    CHECK(said.find("old.obj") != std::string::npos);
}

TEST_CASE("a lit surface is not reshaped", "[input]")
{
    const std::string said = complaints_of(
        [] { reshaped_study("role = \"emitting\"\nselect = { object = \"plate\" }\n"); });
    CHECK(said.find("lit surfaces are not reshaped") != std::string::npos);
}
