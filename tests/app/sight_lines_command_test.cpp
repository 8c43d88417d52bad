#include "app/run.h"
#include "machine/temporary_folder.h"

#include <nlohmann/json.hpp>

#include <catch2/catch.hpp>

#include <fstream>
#include <iterator>

using namespace glim;
using namespace glim::test;

namespace {

const std::string lens = "[lens]\noutline = \"flat\"\nwidth = 150\nheight = 60\n";
const std::string rule = "[rule]\ntable = \"fmvss-108\"\nrule = \"front-turn-area\"\n";

std::string sketch_with(const std::string& lens_lines, const std::string& rule_lines,
                        const std::string& lateral = "700")
{
    return "format = 1\n[vehicle]\nwidth = 1850\n[lamp]\nfunction = \"front_indicator\"\n"
           "lateral = " +
           lateral + "\nheight = 790\n" + lens_lines + rule_lines;
}

Ran run_on(const TemporaryFolder& folder, const std::string& sketch, const std::string& more = "")
{
    std::ofstream(folder / "sketch.toml") << sketch;
    return run("cornerglim sight-lines sketch.toml " + more, folder.path().string());
}

} // namespace

TEST_CASE("a sketch of a flat lens gives limits known on paper", "[app]")
{
    const TemporaryFolder folder;
    const Ran ran = run_on(folder, sketch_with(lens, rule), "--out out");
    INFO(ran.output << ran.errors);
    CHECK(ran.exit_code == 0);
    CHECK(ran.output.find("does not certify") != std::string::npos);
    std::ifstream stream(folder / "out/sight-lines.json");
    const nlohmann::json answer = nlohmann::json::parse(stream);
    for (const auto& row : answer["rows"]) {
        if (row["row"] != "v-b-front")
            continue;
        // 1250 mm2 / (cos 45 cos 15): the face that a flat lens looking ahead needs.
        CHECK(row["least_face_mm2"].get<double>() == Approx(1830.13).margin(0.01));
        CHECK(row["nose"].size() > 20);
        // One mm ahead for each mm inboard.
        const auto& nose = row["nose"];
        CHECK(nose[1]["ahead_mm"].get<double>() - nose[0]["ahead_mm"].get<double>() ==
              Approx(50).margin(0.01));
    }
    for (const char* file :
         {"plan.svg", "side.svg", "front.svg", "plan.dxf", "side.dxf", "front.dxf", "curves.csv",
          "nose.csv", "sight-lines.html", "sight-lines.pdf", "sight-lines.txt"})
        CHECK(std::filesystem::exists(folder / "out" / file));
    // Both rows on one page to pin up.
    CHECK(answer["rows"].size() == 2);
    std::ifstream pdf(folder / "out/sight-lines.pdf", std::ios::binary);
    const std::string bytes((std::istreambuf_iterator<char>(pdf)), {});
    const std::size_t page = bytes.find("/Type /Page %");
    REQUIRE(page != std::string::npos);
    CHECK(bytes.find("/Type /Page %", page + 1) == std::string::npos);
}

TEST_CASE("a wrapped lens has sight lines too", "[app]")
{
    const TemporaryFolder folder;
    const Ran ran = run_on(
        folder, sketch_with("[lens]\noutline = \"wrap\"\nradius = 120\nheight = 60\nfrom = -10\n"
                            "to = 60\n",
                            rule));
    INFO(ran.output << ran.errors);
    CHECK(ran.exit_code == 0);
    CHECK(ran.output.find("nose may reach") != std::string::npos);
}

TEST_CASE("a lens larger than the vehicle, and one beyond its side, are complained of", "[app]")
{
    const TemporaryFolder folder;
    const Ran larger = run_on(
        folder, sketch_with("[lens]\noutline = \"flat\"\nwidth = 2000\nheight = 60\n", rule));
    CHECK(larger.exit_code == 2);
    CHECK(larger.errors.find("sketch.toml:8:") == 0);
    CHECK(larger.errors.find("the lens is larger than the vehicle: 2000 mm across") !=
          std::string::npos);
    const Ran beyond = run_on(folder, sketch_with(lens, rule, "900"));
    CHECK(beyond.exit_code == 2);
    CHECK(beyond.errors.find("the lens reaches 50 mm beyond the side of the vehicle") !=
          std::string::npos);
}

TEST_CASE("a field of no width is complained of", "[app]")
{
    const TemporaryFolder folder;
    const Ran ran = run_on(
        folder, sketch_with(lens, "[rule]\ntable = \"own-example\"\nrule = \"across-45\"\n"));
    CHECK(ran.exit_code == 2);
    CHECK(ran.errors.find("has no width or no height") != std::string::npos);
}

TEST_CASE("all that is wrong with a sketch is told at once", "[app]")
{
    const TemporaryFolder folder;
    const Ran ran = run_on(folder, "format = 2\n[vehicle]\nwidht = 1850\n[lamp]\nlateral = -5\n"
                                   "[lens]\noutline = \"round\"\n[rule]\ntable = \"fmvss-108\"\n"
                                   "rule = \"front-turn-aera\"\n");
    CHECK(ran.exit_code == 2);
    INFO(ran.errors);
    for (const char* said :
         {"write format = 1", "did you mean `width`?", "`lateral` of [lamp] is out of range",
          "outline", "did you mean `front-turn-area`?", "function"})
        CHECK(ran.errors.find(said) != std::string::npos);
}

TEST_CASE("a lens that is too small is told first, and does not end with 0", "[app]")
{
    const TemporaryFolder folder;
    const std::string small = "[lens]\noutline = \"flat\"\nwidth = 60\nheight = 30\n";
    const Ran ran = run_on(folder, sketch_with(small, rule), "--out out");
    INFO(ran.output << ran.errors);
    CHECK(ran.exit_code == 1);
    CHECK(ran.output.find("Too small: ") == 0);
    CHECK(ran.output.find("needs 1250 mm2") != std::string::npos);
    std::ifstream stream(folder / "out/sight-lines.json");
    const nlohmann::json answer = nlohmann::json::parse(stream);
    CHECK(answer["kept"] == false);
    CHECK(answer["command"] == "cornerglim sight-lines sketch.toml");
    std::ifstream text(folder / "out/sight-lines.txt");
    CHECK(std::string((std::istreambuf_iterator<char>(text)), {})
              .find("cornerglim sight-lines sketch.toml") != std::string::npos);
    for (const auto& row : answer["rows"])
        CHECK(row["lens_too_small"] == true);
    std::ifstream page(folder / "out/sight-lines.html");
    const std::string html((std::istreambuf_iterator<char>(page)), {});
    CHECK(html.find("Too small: ") != std::string::npos);
    CHECK(html.find("cornerglim sight-lines sketch.toml") != std::string::npos);
}

TEST_CASE("a lens too small for one way of a rule is large enough by another", "[app]")
{
    const TemporaryFolder folder;
    const std::string small = "[lens]\noutline = \"flat\"\nwidth = 60\nheight = 30\n";
    const std::string un = "[rule]\ntable = \"un-r48\"\nrule = \"front-indicator-visibility\"\n";
    std::string sketch = sketch_with(small, un);
    sketch.replace(sketch.find("[lamp]"), 0, "category = \"N1\"\n");
    const Ran ran = run_on(folder, sketch);
    INFO(ran.output << ran.errors);
    CHECK(ran.exit_code == 0);
    CHECK(ran.output.find("One of these ways is enough: `front-indicator-field`, or "
                          "`reduced-front-area`.") != std::string::npos);
}

TEST_CASE("a row that hangs on a category the sketch does not say is named with the key", "[app]")
{
    const TemporaryFolder folder;
    const std::string un = "[rule]\ntable = \"un-r48\"\nrule = \"front-indicator-visibility\"\n";
    const Ran ran = run_on(folder, sketch_with(lens, un));
    INFO(ran.output << ran.errors);
    CHECK(ran.output.find("Not drawn: `reduced-front-area`, which hangs on the category of the "
                          "vehicle;") != std::string::npos);
    CHECK(ran.output.find("Not drawn: `side-marker-field`") == std::string::npos);
}

TEST_CASE("of a mesh the part that is selected is the lens", "[app]")
{
    const TemporaryFolder folder;
    const std::string mesh = "[lens]\noutline = \"mesh\"\nfile = \"" GLIM_SOURCE_DIR
                             "/meshes/demo/lamp.obj\"\nunit = \"mm\"\nup = \"+z\"\n"
                             "forward = \"-x\"\n";
    const Ran whole = run_on(folder, sketch_with(mesh, rule, "600"), "--json");
    const Ran part = run_on(
        folder, sketch_with(mesh + "select = { object = \"indicator_lens\" }\n", rule, "600"),
        "--json");
    INFO(whole.errors << part.errors);
    const auto facets = [](const Ran& ran) {
        return nlohmann::json::parse(ran.output)["lens_facets"].get<int>();
    };
    CHECK(facets(part) > 0);
    CHECK(facets(part) < facets(whole));
    const Ran none = run_on(
        folder, sketch_with(mesh + "select = { object = \"indicator_lense\" }\n", rule, "600"));
    CHECK(none.exit_code == 2);
    CHECK(none.errors.find("no object of this mesh fits \"indicator_lense\"") != std::string::npos);
}
