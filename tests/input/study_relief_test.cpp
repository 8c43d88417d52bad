#include "input/study_relief.h"

#include "input/bad_files.h"
#include "input/small_study.h"

using namespace glim;
using namespace glim::test;

namespace {

/// The small study with a reshapeable nose; `lines` are in its [[surface]].
Study nose_with(const std::string& lines, const std::string& relief = "")
{
    return study_of(small_study + "\n[[surface]]\nname = \"nose\"\nmesh = \"corner\"\n" +
                    "select = { object = \"nose\" }\nmirror = \"yes\"\n" + lines + "\n" + relief);
}

std::string said_of(const std::string& lines, const std::string& relief = "")
{
    return complaints_of([&] { nose_with(lines, relief); });
}

bool says(const std::string& said, const std::string& what)
{
    return said.find(what) != std::string::npos;
}

const std::string reshapeable = "reshapeable = true\n";

} // namespace

TEST_CASE("a surface is reshapeable only where it says so", "[input]")
{
    CHECK_FALSE(nose_with("").surfaces[SurfaceId{1}].reshape);
    const Study study = nose_with(reshapeable);
    const std::optional<Reshape>& reshape = study.surfaces[SurfaceId{1}].reshape;
    REQUIRE(reshape);
    CHECK_FALSE(reshape->push);
    CHECK_FALSE(reshape->all_edges_fixed);
    CHECK(reshape->edges_fixed_in.empty());
}

TEST_CASE("a push has a direction, and edges are fixed by a word or by boxes", "[input]")
{
    const Study all = nose_with(reshapeable + "push = [2, 0, 0]\nfixed_edges = \"all\"\n");
    CHECK(all.surfaces[SurfaceId{1}].reshape->push->vector() == Vector(1, 0, 0));
    CHECK(all.surfaces[SurfaceId{1}].reshape->all_edges_fixed);
    const Study boxes = nose_with(
        reshapeable + "fixed_edges = [{ least = [-900, -400, 790], most = [-700, 0, 810] }]\n");
    REQUIRE(boxes.surfaces[SurfaceId{1}].reshape->edges_fixed_in.size() == 1);
    CHECK(boxes.surfaces[SurfaceId{1}].reshape->edges_fixed_in[0].most == Point(-700, 0, 810));
}

TEST_CASE("a push along the surface is refused where it is written", "[input]")
{
    const std::string said = said_of(reshapeable + "push = [0, 0, -1]\n");
    INFO(said);
    CHECK(says(said, ":43:8: `push` of surface `nose` is parallel to the surface"));
    CHECK(says(said_of(reshapeable + "push = [0, 0, 0]\n"), "has no length"));
}

TEST_CASE("a surface with two skins has to be told its push", "[input]")
{
    const std::string obj = corner_obj + "o skins\nf 13 16 15 14\nf 13 14 15 16\n";
    const std::string said = complaints_of([&] {
        study_of(small_study + "\n[[surface]]\nname = \"skins\"\nmesh = \"corner\"\n" +
                     "select = { object = \"skins\" }\nmirror = \"yes\"\n" + reshapeable,
                 obj);
    });
    CHECK(says(said, "look every way"));
}

TEST_CASE("what says nothing about a relief is complained of", "[input]")
{
    CHECK(says(said_of("push = [1, 0, 0]\n"), "of a surface that is not reshapeable"));
    // An overlay says no where its base says yes, and the base's push is still there.
    CHECK_FALSE(
        nose_with("reshapeable = false\npush = [1, 0, 0]\n").surfaces[SurfaceId{1}].reshape);
    CHECK(says(said_of("role = \"ignored\"\n" + reshapeable), "is never in the way"));
    CHECK(says(said_of(reshapeable + "fixed_edges = \"some\"\n"), "\"all\" or \"none\""));
    CHECK(says(said_of(reshapeable + "fixed_edges = [{ least = [1, 1, 1], most = [0, 2, 2] }]\n"),
               "`least` exceeds `most`"));
    CHECK(says(complaints_of([] {
                   study_of(with(small_study, "role = \"emitting\"",
                                 "role = \"emitting\"\nreshapeable = true"));
               }),
               "to reshape a lens is to make another lamp"));
}

TEST_CASE("a relief has limits of its own, and defaults", "[input]")
{
    const ReliefWish none = nose_with(reshapeable).relief;
    CHECK(none.checks.empty());
    CHECK_FALSE(none.max_depth);
    CHECK(none.steepest == degrees(30));
    CHECK(none.blend == millimetres(10));
    const ReliefWish wish =
        nose_with(reshapeable, "[relief]\nchecks = [\"across\"]\nmax_depth = 25\nsteepest = 40\n"
                               "blend = 5\nspare_area = 30\nspare = 2\nuntouched = [{ least = "
                               "[-900, -260, 390], most = [-700, 260, 510] }]\n")
            .relief;
    CHECK(wish.checks == std::vector<std::size_t>{0});
    CHECK(wish.max_depth == millimetres(25));
    CHECK(wish.steepest == degrees(40));
    CHECK(wish.blend == millimetres(5));
    CHECK(wish.spare_area == square_millimetres(30));
    CHECK(wish.spare == millimetres(2));
    REQUIRE(wish.untouched.size() == 1);
    CHECK(wish.untouched[0].least == Point(-900, -260, 390));
}

TEST_CASE("limits that contradict themselves or each other are refused, all at once", "[input]")
{
    const std::string said =
        said_of(reshapeable, "[relief]\nchecks = [\"acros\"]\nmax_depth = 5\nspare = 5\n"
                             "steepest = 90\nblend = -1\nspare_area = -1\n");
    CHECK(says(said, "there is no [[check]] `acros`"));
    CHECK(says(said, "`spare` of [relief] is not less than `max_depth`"));
    CHECK(says(said, "`steepest` of [relief] is not between 0 and 90 degrees"));
    CHECK(says(said, "`blend` of [relief] is below 0"));
    CHECK(says(said, "`spare_area` of [relief] is below 0"));
    CHECK(says(said_of(reshapeable, "[relief]\nmax_depth = 0\n"), "is not above 0"));
    CHECK(says(said_of(reshapeable, "[relief]\nchecks = []\n"), "names no check"));
}
