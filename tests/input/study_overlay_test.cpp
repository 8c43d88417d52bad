#include "input/study_overlay.h"

#include "input/bad_files.h"
#include "input/read_study.h"
#include "input/small_study.h"

using namespace glim;
using namespace glim::test;

namespace {

/// The small study in `base/`, with its mesh, and a study over it in the folder above.
class TwoFolders {
public:
    explicit TwoFolders(const std::string& over)
    {
        std::filesystem::create_directory(folder_ / "base");
        write(folder_ / "base/corner.obj", corner_obj);
        write(folder_ / "base/small.toml", small_study);
        write(folder_ / "over.toml", "format = 1\nbase = \"base/small.toml\"\n" + over);
    }
    std::filesystem::path operator/(const std::string& name) const { return folder_ / name; }
    Study study() const { return read_study(folder_ / "over.toml"); }

private:
    TemporaryFolder folder_;
};

std::string said_of(const std::filesystem::path& file)
{
    return complaints_of([&] { read_study(file); });
}

} // namespace

TEST_CASE("a study over another takes everything from it but what it changes", "[input]")
{
    const Study study = TwoFolders("title = \"wider\"\n[vehicle]\noverall_width = 1900\n"
                                   "[sampling]\nstep = 5\n")
                            .study();
    CHECK(study.title == "wider");
    CHECK(in_mm(*study.vehicle.overall_width) == 1900);
    CHECK(study.vehicle.modelled_side == Side::left);
    CHECK(study.sampling.step == degrees(5));
    CHECK(study.lamps.size() == 1);
    CHECK(study.meshes[0].file == "base/corner.obj");
}

TEST_CASE("entries of the same name are changed key by key, others are added", "[input]")
{
    const Study study = TwoFolders("[[lamp]]\nname = \"indicator\"\ncategory = \"1a\"\n"
                                   "[[lamp]]\nname = \"position\"\nfunction = \"front_position\"\n"
                                   "side = \"left\"\nemits = [\"lens\"]\n"
                                   "[[check]]\nname = \"across\"\n"
                                   "lamps = [\"indicator\", \"position\"]\n")
                            .study();
    REQUIRE(study.lamps.size() == 2);
    CHECK(study.lamps[LampId{0}].category == "1a");
    CHECK(study.lamps[LampId{0}].emits == std::vector{SurfaceId{0}});
    CHECK(study.lamps[LampId{1}].name == "position");
    REQUIRE(study.checks.size() == 1);
    CHECK(study.checks[0].rule == "across-45");
    CHECK(study.checks[0].lamps.size() == 2);
}

TEST_CASE("a value is replaced whole, so that one ground takes another's place", "[input]")
{
    const Study study =
        TwoFolders("[ground.curb]\naxles = { front = [0, 0, 0], rear = [2700, 0, 27] }\n"
                   "[ground.unladen]\nheight = 3\n[[surface]]\nname = \"lens\"\n"
                   "select = { box = { least = [-501, -800, 0], most = [-499, 0, 900] } }\n")
            .study();
    REQUIRE(study.grounds.size() == 2);
    CHECK(in_mm(study.grounds[1].ground.height_of(Point(2700, 0, 27))) == Approx(0).margin(1e-9));
    CHECK(study.surfaces[SurfaceId{0}].mesh.facets.size() == 2);
}

TEST_CASE("an entry is taken away, and what still refers to it is complained of", "[input]")
{
    const TwoFolders both("[[check]]\nname = \"across\"\nremove = true\n"
                          "[[check]]\nname = \"other\"\ntable = \"own-example\"\n"
                          "rule = \"across-45\"\nlamp = \"indicator\"\n");
    REQUIRE(both.study().checks.size() == 1);
    CHECK(both.study().checks[0].name == "other");

    const TwoFolders lampless("[[lamp]]\nname = \"indicator\"\nremove = true\n"
                              "[[lamp]]\nname = \"position\"\nfunction = \"front_position\"\n"
                              "side = \"left\"\nemits = [\"lens\"]\n");
    const std::string said = said_of(lampless / "over.toml");
    CHECK(said.find("base/small.toml:35:8: ") != std::string::npos);
    CHECK(said.find("`indicator`") != std::string::npos);
}

TEST_CASE("a study whose checks are all taken away asks nothing", "[input]")
{
    const TwoFolders none("[[check]]\nname = \"across\"\nremove = true\n");
    CHECK(said_of(none / "over.toml").find("nothing is asked") != std::string::npos);
}

TEST_CASE("a complaint names the study in which its cause stands", "[input]")
{
    const TwoFolders both("[[lamp]]\nname = \"indicator\"\nside = \"lefft\"\n");
    write(both / "base/small.toml", with(small_study, "\"front_indicator\"", "\"indicator\""));
    const std::string said = said_of(both / "over.toml");
    CHECK(said.find((both / "over.toml").string() + ":5:8: `side`") != std::string::npos);
    CHECK(said.find((both / "base/small.toml").string() + ":27:12: `function`") !=
          std::string::npos);
}

TEST_CASE("a base may have a base, but none leads back", "[input]")
{
    const TwoFolders both("title = \"over\"\n");
    write(both / "top.toml", "base = \"over.toml\"\n[sampling]\nfeature = 2\n");
    const Study study = read_study(both / "top.toml");
    CHECK(study.title == "over");
    CHECK(study.sampling.feature == millimetres(2));

    write(both / "base/small.toml", "base = \"../top.toml\"\n");
    const std::string said = said_of(both / "top.toml");
    CHECK(said.find("base/small.toml:1:8: the base `../top.toml` leads back") != std::string::npos);
    write(both / "top.toml", "base = \"./base/../top.toml\"\n");
    CHECK(said_of(both / "top.toml").find("leads back") != std::string::npos);
}

TEST_CASE("what is wrong with removing is told", "[input]")
{
    const TwoFolders misspelt("[[check]]\nname = \"acros\"\nremove = true\n");
    CHECK(said_of(misspelt / "over.toml") ==
          (misspelt / "over.toml").string() +
              ":5:10: there is no [[check]] `acros` in the base to be removed\n"
              "    did you mean `across`?\n");
    CHECK(complaints_of([] {
              study_of(small_study + "\n[[check]]\nname = \"other\"\nremove = true\n");
          }).find("[[check]] `other` removes nothing") != std::string::npos);
}
