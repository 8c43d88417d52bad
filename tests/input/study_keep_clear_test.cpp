#include "input/study_keep_clear.h"

#include "input/bad_files.h"
#include "input/small_study.h"

using namespace glim;
using namespace glim::test;

namespace {

Study study_wishing(const std::string& lines)
{
    return study_of(small_study + "\n[keep_clear]\n" + lines);
}

std::string said_of(const std::string& lines)
{
    return complaints_of([&] { study_wishing(lines); });
}

bool says(const std::string& said, const std::string& what)
{
    return said.find(what) != std::string::npos;
}

} // namespace

TEST_CASE("a study that says nothing of keep-clear space has the defaults", "[input]")
{
    const KeepClearWish wish = study_of(small_study).keep_clear;
    CHECK(wish.checks.empty());
    CHECK_FALSE(wish.box);
    CHECK_FALSE(wish.plane);
    CHECK(wish.chord_error == millimetres(2));
    CHECK(wish.favour == FavouredEdge::least_volume);
    CHECK(wish.part_step == degrees(5));
}

TEST_CASE("a keep-clear space ends at a box or at an upright plane", "[input]")
{
    const KeepClearWish boxed =
        study_wishing("box = { least = [-2000, -900, 0], most = [0, 900, 1200] }").keep_clear;
    REQUIRE(boxed.box);
    CHECK(boxed.box->most == Point(0, 900, 1200));
    const KeepClearWish cut =
        study_wishing("plane = { point = [-2000, 0, 0], normal = [-2, 0, 0] }").keep_clear;
    REQUIRE(cut.plane);
    CHECK(cut.plane->normal.vector() == Vector(-1, 0, 0));
}

TEST_CASE("a plane that leans, and a reach given twice, are refused where they are written",
          "[input]")
{
    CHECK(says(said_of("plane = { point = [0, 0, 0], normal = [-1, 0, 0.1] }"), "is not level"));
    CHECK(says(said_of("plane = { point = [0, 0, 0], normal = [0, 0, 0] }"), "is not level"));
    CHECK(says(said_of("plane = { point = [-2000, 0, 0], normal = [-1, 0, 0] }\n"
                       "box = { least = [-2000, -900, 0], most = [0, 900, 1200] }"),
               "[keep_clear] has a `box` and a `plane`"));
    CHECK(says(said_of("box = { least = [0, 0, 0], most = [-1, 1, 1] }"), "`least` exceeds"));
}

TEST_CASE("figures of a keep-clear space that make no mesh are refused", "[input]")
{
    CHECK(says(said_of("chord_error = 0"), "`chord_error` of [keep_clear] is not between"));
    CHECK(says(said_of("chord_error = -1"), "`chord_error` of [keep_clear] is not between"));
    CHECK(says(said_of("part_step = 0.5"), "`part_step` of [keep_clear] is not between"));
    CHECK(says(said_of("favour = \"uper\""), "upper"));
    CHECK(says(said_of("checks = [\"nobody\"]"), "nobody"));
}
