#include "input/study_tolerances.h"

#include "input/bad_files.h"
#include "input/small_study.h"

using namespace glim;
using namespace glim::test;

namespace {

const std::string nose = "\n[[surface]]\nname = \"nose\"\nmesh = \"corner\"\n"
                         "select = { object = \"nose\" }\nmirror = \"yes\"\n"
                         "moves_with = \"indicator\"\n"
                         "\n[[surface]]\nname = \"plate\"\nmesh = \"corner\"\n"
                         "select = { object = \"plate\" }\nmirror = \"straddles\"\n";

Variation variation_of(const std::string& lines)
{
    return study_of(small_study + nose + lines).variation;
}

std::string said_of(const std::string& lines)
{
    return complaints_of([&] { variation_of(lines); });
}

bool says(const std::string& said, const std::string& what)
{
    return said.find(what) != std::string::npos;
}

/// A tolerance of the plate that is in order; `lines` are added to it.
std::string of_plate(const std::string& lines)
{
    return "[[tolerance]]\nname = \"t\"\norigin = \"part\"\n" + lines;
}

constexpr SurfaceId lens_id{0}, nose_id{1}, plate_id{2};

} // namespace

TEST_CASE("a study without tolerances has none, and its task is the usual one", "[input]")
{
    const Variation none = variation_of("");
    CHECK(none.tolerances.empty());
    CHECK(none.task.builds == 4096);
    CHECK(none.task.directions == 21);
    CHECK_FALSE(none.task.asked);
}

TEST_CASE("a tolerance of a lamp moves all that moves with it", "[input]")
{
    const Tolerance t = variation_of(of_plate("lamps = [\"indicator\"]\n"
                                              "distribution = \"limits\"\nsigmas = 4\nup = 0.5\n"
                                              "turn = 0.1\nabout = [-500, -650, 675]\n"))
                            .tolerances.at(0);
    CHECK(t.surfaces == std::vector<SurfaceId>{lens_id, nose_id});
    CHECK(t.lamps == std::vector<LampId>{LampId{0}});
    CHECK(t.spread == Spread::limits);
    CHECK(t.sigmas == 4);
    CHECK(t[ToleranceWay::up] == 0.5);
    CHECK(t[ToleranceWay::turn] == 0.1);
    CHECK(t[ToleranceWay::forward] == 0);
    CHECK(*t.about == Point(-500, -650, 675));
    CHECK(t.level == 0);
}

TEST_CASE("a module has what the modules in it have, in whatever order they are written", "[input]")
{
    const Variation read =
        variation_of("[[module]]\nname = \"front\"\nmodules = [\"unit\"]\nsurfaces = [\"plate\"]\n"
                     "[[module]]\nname = \"unit\"\nlamps = [\"indicator\"]\n" +
                     of_plate("module = \"front\"\ndistribution = \"normal\"\nforward = 1\n"));
    const Tolerance& t = read.tolerances.at(0);
    CHECK(t.surfaces == std::vector<SurfaceId>{lens_id, nose_id, plate_id});
    CHECK(t.level == 2);
    CHECK(t.module == "front");
}

TEST_CASE("a module that holds itself is refused", "[input]")
{
    const std::string said = said_of("[[module]]\nname = \"a\"\nmodules = [\"b\"]\n"
                                     "[[module]]\nname = \"b\"\nmodules = [\"a\"]\n"
                                     "[[module]]\nname = \"c\"\n");
    CHECK(says(said, "the [[module]] `a` holds itself"));
    CHECK(says(said, "the [[module]] `b` holds itself"));
    CHECK(says(said, "[[module]] `c` holds nothing"));
}

TEST_CASE("tolerances that cannot be are complained of, all at once", "[input]")
{
    const std::string said = said_of(
        "[[tolerance]]\nname = \"t\"\nsurfaces = [\"plaet\"]\norigin = \"studio\"\n"
        "distribution = \"limits\"\nforward = -1\nup = 90\nroll = 6\n"
        "[[tolerance]]\nname = \"t\"\norigin = \"part\"\ndistribution = \"normal\"\nsigmas = 3\n"
        "lamps = [\"indicator\"]\nprofile = 0.5\nabout = [0, 0, 0]\n"
        "[[tolerance]]\nname = \"u\"\norigin = \"part\"\nmodule = \"front\"\n");
    INFO(said);
    CHECK(says(said, "there is no surface `plaet`"));
    CHECK(says(said, "`origin` of [[tolerance]] `t` is \"studio\""));
    CHECK(says(said, "does not say how often its limits are passed"));
    CHECK(says(said, "`forward` of [[tolerance]] `t` is below 0"));
    CHECK(says(said, "`up` of [[tolerance]] `t` is no tolerance"));
    CHECK(says(said, "from 0 to 5 deg"));
    CHECK(says(said, "[[tolerance]] `t` turns about no point"));
    CHECK(says(said, "the tolerance `t` is there already"));
    CHECK(says(said, "`sigmas` of [[tolerance]] `t` says nothing"));
    CHECK(says(said, "`profile` of [[tolerance]] `t` is not of surfaces alone"));
    CHECK(says(said, "`profile` of [[tolerance]] `t` is of a lit surface"));
    CHECK(says(said, "`about` of [[tolerance]] `t` says nothing"));
    CHECK(says(said, "there is no module `front`"));
    CHECK(says(said, "[[tolerance]] `u` does not say what may be off"));
    CHECK(says(said, "`distribution` is missing"));
}

TEST_CASE("what is asked of tolerances is read, and refused where it makes no sense", "[input]")
{
    const std::string t = of_plate("surfaces = [\"plate\"]\ndistribution = \"uniform\"\nup = 1\n");
    const Variation read =
        variation_of(t + "[tolerances]\nbuilds = 1000\ndirections = 0\nstep = 2.5\nseed = 7\n"
                         "contributor = \"t\"\nshare = 0.95\nchecks = [\"across\"]\n");
    CHECK(read.task.builds == 1000);
    CHECK(read.task.directions == 0);
    CHECK(read.task.step == degrees(2.5));
    CHECK(read.task.seed == 7);
    CHECK(read.task.asked == std::size_t{0});
    CHECK(read.task.share == 0.95);
    CHECK(read.task.checks == std::vector<std::size_t>{0});

    const std::string said =
        said_of(t + "[tolerances]\nbuilds = 0.5\nstep = 0\nshare = 2\nchecks = [\"acros\"]\n");
    INFO(said);
    CHECK(says(said, "`builds` of [tolerances] is no such number"));
    CHECK(says(said, "`step` of [tolerances] is not above 0"));
    CHECK(says(said, "`share` of [tolerances] is not above 0 and at most 1"));
    CHECK(says(said, "there is no check `acros`"));
    CHECK(says(said_of("[tolerances]\ncontributor = \"t\"\n"), "there is no tolerance `t`"));
}
