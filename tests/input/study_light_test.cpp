#include "input/study_light.h"

#include "input/bad_files.h"
#include "input/small_study.h"

using namespace glim;
using namespace glim::test;

namespace {

const std::string with_file =
    "emits = [\"lens\"]\nphotometry = \"lamp.ies\"\nmounting = { measured_on = \"left\" }\n";

/// The small study with these lines in its lamp, beside a photometric file and a picture.
Study lamp_with(const std::string& lines)
{
    const TemporaryFolder folder;
    const WorkingFolder here(folder.path());
    write(folder / "corner.obj", corner_obj);
    write(folder / "lamp.ies", lamp_ies);
    write(folder / "bright.csv", "# top first\n1, 0.5\n0.25; 0\n");
    write(folder / "dark.csv", "0 0\n");
    write(folder / "study.toml", with(small_study, "emits = [\"lens\"]\n", lines));
    return read_study("study.toml");
}

std::string said_of(const std::string& lines)
{
    return complaints_of([&] { lamp_with(lines); });
}

} // namespace

TEST_CASE("a lamp's photometric file is read, and named among what was read", "[input]")
{
    const Study study = lamp_with(with_file);
    REQUIRE(study.lights.size() == 1);
    const LampLight* light = study.light_of(LampId{0});
    REQUIRE(light != nullptr);
    CHECK(light->file == "lamp.ies");
    CHECK(light->transmittance == 1);
    CHECK(std::holds_alternative<UniformlyBright>(light->brightness));
    // The file has 8 cd to the right of one who looks out; on the left lamp that is inboard.
    const auto turn = file_from_lamp(light->mounting, ReferenceAxis::forward);
    CHECK(intensity_toward(light->photometry.grid, turn, {degrees(-90), degrees(0)}) ==
          candelas(8));
    CHECK(intensity_toward(light->photometry.grid, turn, {degrees(90), degrees(0)}) == candelas(4));
    CHECK(study.files[2].use == FileUse::photometry);
    CHECK(study.files[2].file == "lamp.ies");
}

TEST_CASE("a file that is not alike on both sides must say which lamp it is of", "[input]")
{
    CHECK(said_of("emits = [\"lens\"]\nphotometry = \"lamp.ies\"\n")
              .find("a type A file does not say for which side it is") != std::string::npos);
    CHECK(said_of("emits = [\"lens\"]\nphotometry = \"lamp.ies\"\nmounting = { beam = \"nadir\", "
                  "measured_on = \"left\" }\n")
              .find("a type A file has no beam along \"nadir\"") != std::string::npos);
}

TEST_CASE("a median lamp's file serves a lamp on one side only if it is alike on both", "[input]")
{
    const auto measured_on_median = [](const std::string& ies, const std::string& side) {
        const TemporaryFolder folder;
        const WorkingFolder here(folder.path());
        write(folder / "corner.obj", corner_obj);
        write(folder / "lamp.ies", ies);
        const std::string text =
            with(small_study, "emits = [\"lens\"]\n",
                 with(with_file, "measured_on = \"left\"", "measured_on = \"median\""));
        const std::size_t lamp = text.find("[[lamp]]");
        write(folder / "study.toml",
              text.substr(0, lamp) + with(text.substr(lamp), "side = \"left\"", side));
        return complaints_of([] { read_study("study.toml"); });
    };
    const std::string complaint =
        "study.toml:31:12: `mounting` of [[lamp]] `indicator` says that a median lamp was "
        "measured, but the file is not alike on both sides and the lamp stands on one: nothing "
        "tells which half is outboard\n"
        "    say for which lamp the file is: measured_on = \"left\" or \"right\"\n";
    const std::string alike = with(lamp_ies, "0 8 0", "0 4 0");
    CHECK(measured_on_median(lamp_ies, "side = \"left\"") == complaint);
    CHECK(measured_on_median(lamp_ies, "side = \"right\"").find(complaint) != std::string::npos);
    CHECK(measured_on_median(alike, "side = \"left\"") == "(read without a complaint)");
    CHECK(measured_on_median(lamp_ies, "side = \"median\"").find(complaint) == std::string::npos);
}

TEST_CASE("what is said of a photometric file that is not named is a complaint", "[input]")
{
    CHECK(said_of("emits = [\"lens\"]\ntransmittance = 0.9\n") ==
          "study.toml:30:17: `transmittance` of [[lamp]] `indicator` says something of a "
          "photometric file that is not named\n"
          "    name it, photometry = \"FILE.ies\", or take the key away\n");
    CHECK(said_of("emits = [\"lens\"]\nphotometry = \"lamb.ies\"\n")
              .find("did you mean `lamp.ies`?") != std::string::npos);
}

TEST_CASE("transmittances are shares", "[input]")
{
    CHECK(lamp_with(with_file + "transmittance = 0.8\n").lights.front().transmittance == 0.8);
    CHECK(said_of(with_file + "transmittance = 80\n").find("is no share of 1") !=
          std::string::npos);
}

TEST_CASE("the light of a lamp is shared out by surface or by a picture", "[input]")
{
    const Study by =
        lamp_with(with(with_file, "[\"lens\"]", "[\"lens\", \"shell\"]") +
                  "brightness = { shares = [0.75, 0.25] }\n"
                  "[[surface]]\nname = \"shell\"\nmesh = \"corner\"\n"
                  "select = { object = \"shell\" }\nrole = \"emitting\"\norient = \"as-is\"\n"
                  "mirror = \"yes\"\n");
    CHECK(std::get<BrightBySurface>(by.lights.front().brightness).shares ==
          std::vector<double>{0.75, 0.25});
    const Study seen =
        lamp_with(with_file + "axis = \"forward\"\nbrightness = { picture = \"bright.csv\" }\n");
    const auto& picture = std::get<LuminancePicture>(seen.lights.front().brightness);
    CHECK(picture.columns == 2);
    CHECK(picture.rows == 2);
    CHECK(picture.grey == std::vector<float>{1, 0.5F, 0.25F, 0});
    CHECK(seen.files[3].use == FileUse::luminance);
}

TEST_CASE("the whole light of a single surface is uniform brightness", "[input]")
{
    const Study whole = lamp_with(with_file + "brightness = { shares = [1] }\n");
    CHECK(std::holds_alternative<UniformlyBright>(whole.lights.front().brightness));
}

TEST_CASE("brightness that shares out nothing is a complaint", "[input]")
{
    CHECK(said_of(with_file + "brightness = { shares = [0.5] }\n")
              .find("are no shares of one light") != std::string::npos);
    CHECK(said_of(with_file + "brightness = { picture = \"bright.csv\" }\n")
              .find("lies before a lamp that declares no axis") != std::string::npos);
    CHECK(said_of(with_file + "axis = \"forward\"\nbrightness = { picture = \"dark.csv\" }\n") ==
          "dark.csv: this picture is dark all over\n    look at what it was exported from\n");
    CHECK(said_of(with_file + "brightness = {}\n").find("is not said in one way") !=
          std::string::npos);
}

TEST_CASE("a lamp with light must have a category that its proof knows", "[input]")
{
    const auto asking = [](const std::string& lines, const std::string& end = "") {
        const TemporaryFolder folder;
        const WorkingFolder here(folder.path());
        write(folder / "corner.obj", corner_obj);
        write(folder / "lamp.ies", lamp_ies);
        std::string text = with(small_study, "emits = [\"lens\"]\n", lines);
        text = with(text, "table = \"own-example\"\nrule = \"across-45\"",
                    "table = \"un-r48\"\nrule = \"front-indicator-field\"");
        write(folder / "study.toml", text + end);
        return complaints_of([] { read_study("study.toml"); });
    };
    CHECK(asking("emits = [\"lens\"]\n") == "(read without a complaint)");
    CHECK(
        asking(with_file).find("depends on the category of lamp `indicator`, which the study does "
                               "not give") != std::string::npos);
    CHECK(asking(with_file).find("or add the `front_fog` or `dipped_beam` lamp") !=
          std::string::npos);
    CHECK(asking(with_file + "category = \"1a\"\n") == "(read without a complaint)");
    // Where there is a lamp to measure a gap to, the gap gives the category.
    CHECK(asking(with_file,
                 "[[lamp]]\nname = \"beam\"\nfunction = \"dipped_beam\"\n"
                 "side = \"left\"\nemits = [\"lens\"]\n") == "(read without a complaint)");
}
