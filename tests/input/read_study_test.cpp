#include "input/read_study.h"

#include "input/bad_files.h"
#include "input/small_study.h"
#include "model/study_keys.h"
#include "units/trig.h"

#include <regex>

using namespace glim;
using namespace glim::test;

namespace {

const Surface& surface_named(const Study& study, const std::string& name)
{
    for (const Surface& surface : study.surfaces)
        if (surface.name == name)
            return surface;
    throw std::runtime_error("the study has no surface " + name);
}

/// Which way the first facet looks, not normalised.
Vector outside_of(const Surface& surface) { return area_vector(surface.mesh, 0); }

/// Something for the full study to remove.
constexpr const char* base_of_full_study = "[[check]]\nname = \"spare\"\n";

} // namespace

TEST_CASE("every malformed study is answered with all its complaints", "[input]")
{
    expect_complaints(GLIM_SOURCE_DIR "/tests/bad/studies", 40,
                      [](const std::string& name) { read_study(name); });
}

TEST_CASE("a small study is read as it is written", "[input]")
{
    const Study study = study_of(small_study);
    CHECK(study.title.empty());
    CHECK(study.vehicle.forward.vector() == Vector(-1, 0, 0));
    CHECK(study.vehicle.left().vector() == Vector(0, -1, 0));
    CHECK(study.vehicle.modelled_side == Side::left);
    CHECK_FALSE(study.vehicle.overall_width);
    CHECK(study.grounds.front().state == "curb");
    REQUIRE(study.lamps.size() == 1);
    const Lamp& lamp = study.lamps[LampId{0}];
    CHECK(lamp.emits == std::vector{SurfaceId{0}});
    CHECK_FALSE(lamp.axis);
    CHECK_FALSE(lamp.centre);
    CHECK(surface_named(study, "lens").role == Role::emitting);
    CHECK(surface_named(study, "lens").mesh.facets.size() == 2);
    REQUIRE(study.checks.size() == 1);
    CHECK(study.tables[study.checks[0].table].name == "own-example");
    CHECK(study.checks[0].rule == "across-45");
    CHECK(study.checks[0].lamps == std::vector{LampId{0}});
    CHECK(study.sampling.step == degrees(1));
}

// Forward -z, up +y: left is up x forward = -x. So (x, y, z) m of the file lies z m to the rear,
// x m to the right and y m up; in the vehicle, with left = -y, that is (z, x, y).
TEST_CASE("a mesh in metres with its own axes is scaled and turned into the vehicle's", "[input]")
{
    const std::string obj = "o lens\n"
                            "v -0.7 0.65 -0.5\nv -0.6 0.65 -0.5\nv -0.6 0.7 -0.5\nf 1 3 2\n";
    const std::string text = with(small_study, "unit = \"mm\"\nup = \"+z\"\nforward = \"-x\"",
                                  "unit = \"m\"\nup = \"+y\"\nforward = \"-z\"");
    const Study study = study_of(text, obj);
    const TriangleMesh& lens = surface_named(study, "lens").mesh;
    const Box box = box_of(lens);
    CHECK(box.least.isApprox(Point(-500, -700, 650), 1e-12));
    CHECK(box.most.isApprox(Point(-500, -600, 700), 1e-12));
    CHECK(outside_of(surface_named(study, "lens")).x() < 0);
    CHECK(in_mm2(area_of(lens)) == Approx(2500));
    CHECK(study.meshes[0].unit == "m");
    CHECK(study.meshes[0].health.facets == 1);
}

TEST_CASE("facets that no surface selects become one opaque surface, and are told", "[input]")
{
    const Study study = study_of(small_study);
    const Surface& rest = surface_named(study, "rest of corner");
    CHECK(rest.role == Role::opaque);
    CHECK(rest.mirror == MirrorRule::yes);
    CHECK(rest.mesh.facets.size() == 16);
    REQUIRE(study.warnings.size() == 2);
    CHECK(study.warnings[0].what.find("16 of 18 facets of mesh `corner`") == 0);
    CHECK(study.warnings[0].place.line == 11);
    // The plate among them is drawn whole.
    CHECK(study.warnings[1].what == "surface `rest of corner` has a twin, but reaches 250 mm over "
                                    "the median plane: is it drawn whole?");
}

TEST_CASE("a whole body needs no word about mirroring and gets no twins", "[input]")
{
    std::string text = with(small_study, "modelled_side = \"left\"", "modelled_side = \"both\"");
    text = with(text, "mirror = \"yes\"\n", "");
    const Study study = study_of(text);
    CHECK(study.vehicle.modelled_side == Side::median);
    CHECK(surface_named(study, "lens").mirror == MirrorRule::no);
    CHECK(surface_named(study, "rest of corner").mirror == MirrorRule::no);
}

TEST_CASE("ground below two axles is level across and raked along", "[input]")
{
    const std::string axles = "axles = { front = [0, 0, -25], rear = [2700, 0, 0] }";
    const Study study = study_of(with(small_study, "height = 0", axles));
    // 25 mm of rake over 2.7 m is 0.53 degrees: domain arithmetic, atan(25 / 2700).
    const Direction up = study.grounds.front().ground.up;
    CHECK(in_degrees(arc_sine(up.vector().x())) == Approx(-std::atan(25.0 / 2700) * 57.29577951));
    CHECK(up.vector().y() == 0);
    CHECK(up.vector().z() > 0);
    CHECK(in_mm(study.grounds.front().ground.height_of(Point(2700, 500, 0))) ==
          Approx(0).margin(1e-9));
    CHECK(in_mm(study.grounds.front().ground.height_of(Point(0, -500, 75))) ==
          Approx(100).epsilon(1e-3));
}

TEST_CASE("ground at a height lies there along the axis that points up", "[input]")
{
    const Study study = study_of(with(small_study, "height = 0", "height = -310.5"));
    CHECK(in_mm(study.grounds.front().ground.height_of(Point(5, 6, 0))) == 310.5);
}

TEST_CASE("each state of load has its own ground, in a fixed order", "[input]")
{
    const Study study = study_of(with(small_study, "[ground.curb]\nheight = 0",
                                      "[ground.design]\nheight = -20\n[ground.unladen]\n"
                                      "height = 0\n[ground.curb]\nheight = -12.5"));
    REQUIRE(study.grounds.size() == 3);
    CHECK(study.grounds[0].state == "unladen");
    CHECK(study.grounds[1].state == "curb");
    CHECK(study.grounds[2].state == "design");
    REQUIRE(study.ground_in("curb") != nullptr);
    CHECK(in_mm(study.ground_in("curb")->ground.height_of(Point(7, 8, 0))) == 12.5);
    CHECK(study_of(small_study).ground_in("design") == nullptr);
}

// A rise of 3 in 100 along x: at x = 100 the ground is 3 higher.
TEST_CASE("ground as a plane goes through its point, and its normal is turned up", "[input]")
{
    for (const std::string normal : {"[-3, 0, 100]", "[3, 0, -100]"}) {
        const Study study =
            study_of(with(small_study, "height = 0",
                          "plane = { point = [10, 20, -5], normal = " + normal + " }"));
        const Ground& ground = study.grounds.front().ground;
        CHECK(ground.up.vector().z() > 0);
        CHECK(in_mm(ground.height_of(Point(10, -400, -5))) == Approx(0).margin(1e-9));
        CHECK(in_mm(ground.height_of(Point(110, 0, -2))) == Approx(0).margin(1e-9));
        CHECK(in_mm(ground.height_of(Point(110, 0, 0))) > 0);
    }
}

TEST_CASE("the extreme outer edge is half the overall width unless it is given", "[input]")
{
    const auto edge = [](const std::string& written) {
        return study_of(with(small_study, "up = \"+z\"", written + "\nup = \"+z\""))
            .vehicle.outer_edge();
    };
    CHECK_FALSE(edge(""));
    REQUIRE(edge("overall_width = 1850"));
    CHECK(in_mm(edge("overall_width = 1850")->from_median) == 925);
    CHECK(edge("overall_width = 1850")->derived);
    CHECK(in_mm(edge("overall_width = 1850\nextreme_outer_edge = 920")->from_median) == 920);
    CHECK_FALSE(edge("extreme_outer_edge = 920")->derived);
}

TEST_CASE("a reflex reflector is in the way and never lit", "[input]")
{
    const Study study = study_of(small_study + "\n[[surface]]\nname = \"reflector\"\n"
                                               "mesh = \"corner\"\nselect = { object = "
                                               "\"nose\" }\nrole = \"reflex\"\n"
                                               "mirror = \"yes\"\n");
    CHECK(surface_named(study, "reflector").role == Role::reflex);
    CHECK(surface_named(study, "reflector").blocks());
}

TEST_CASE("a lamp's axis is a word or a vector of the vehicle", "[input]")
{
    const auto axis = [](const std::string& written) {
        const std::string text = with(
            small_study, "emits =", "centre = [-500, -650, 675]\naxis = " + written + "\nemits =");
        return *study_of(text).lamps[LampId{0}].axis;
    };
    CHECK(axis("\"forward\"").vector() == Vector(-1, 0, 0));
    CHECK(axis("[-3, -4, 0]").vector().isApprox(Vector(-0.6, -0.8, 0)));
    // The lens faces forward, edge on to the outboard axis: nothing to ask about its facing.
    CHECK(axis("\"outboard\"").vector() == Vector(0, -1, 0));
}

TEST_CASE("a lens that looks inward is turned over on request", "[input]")
{
    const std::string inward = with(corner_obj, "f 1 4 3 2", "f 1 2 3 4");
    for (const std::string word : {"flip", "outward"}) {
        const std::string text = with(small_study, "role = \"emitting\"",
                                      "role = \"emitting\"\norient = \"" + word + "\"");
        CHECK(outside_of(surface_named(study_of(text, inward), "lens")).x() < 0);
    }
    const std::string outward =
        with(small_study, "role = \"emitting\"", "role = \"emitting\"\norient = \"outward\"");
    CHECK(outside_of(surface_named(study_of(outward), "lens")).x() < 0);
}

TEST_CASE("the question about a lens of two skins has three answers", "[input]")
{
    const auto lens = [](const std::string& select, const std::string& orient) {
        std::string text = with(small_study, "{ object = \"lens\" }", select);
        text = with(text, "role = \"emitting\"", "role = \"emitting\"\n" + orient);
        return surface_named(study_of(text), "lens").mesh;
    };
    const TriangleMesh outer = lens("{ object = \"shell\", facing = [-1, 0, 0] }", "");
    CHECK(outer.facets.size() == 2);
    CHECK(box_of(outer).most.x() == -520);
    CHECK(lens("{ object = \"shell\" }", "orient = \"as-is\"").facets.size() == 12);
    const std::string boxed = "{ object = \"shell\", box = { least = [-521, -700, 650], "
                              "most = [-519.5, -600, 700] } }";
    CHECK(lens(boxed, "").facets.size() == 2);
}

TEST_CASE("lit facets that the file repeats are told", "[input]")
{
    const std::string twice = with(corner_obj, "f 1 4 3 2\n", "f 1 4 3 2\nf 1 4 3 2\n");
    const Study study = study_of(small_study, twice);
    CHECK(std::any_of(study.warnings.begin(), study.warnings.end(), [](const Warning& w) {
        return w.what == "the lit surface `lens` repeats 2 of its facets; each of them sends light "
                         "once";
    }));
}

TEST_CASE("a lit surface without a lamp is told, for it only stands in the way", "[input]")
{
    const std::string text = small_study + "\n[[surface]]\nname = \"spare\"\nmesh = \"corner\"\n"
                                           "select = { object = \"nose\" }\nrole = \"emitting\"\n"
                                           "mirror = \"no\"\n";
    const Study study = study_of(text);
    const auto told = std::find_if(study.warnings.begin(), study.warnings.end(), [](const auto& w) {
        return w.what.find("surface `spare` emits for no lamp") == 0;
    });
    REQUIRE(told != study.warnings.end());
    CHECK(told->place.line == 2 + std::count(small_study.begin(), small_study.end(), '\n'));
}

TEST_CASE("complaints of a mesh file join those of the study", "[input]")
{
    const std::string said = complaints_of(
        [] { study_of(with(small_study, "ground.curb", "ground.laden"), "o lens\nf 1 2 3\n"); });
    CHECK(said.find("study.toml:8:9: unknown key `laden` in [ground]") != std::string::npos);
    CHECK(said.find("corner.obj:2:") != std::string::npos);
}

TEST_CASE("every key of the study file is read where the table of keys has it", "[input]")
{
    const std::string full = read(GLIM_SOURCE_DIR "/tests/input/full_study.toml");
    const TemporaryFolder folder;
    write(folder / "corner.obj", corner_obj);
    write(folder / "base.toml", base_of_full_study);
    write(folder / "lamp.ies", lamp_ies);
    write(folder / "bright.csv", "1 0.5\n0.5 0\n");
    write(folder / "full.toml", full);
    CHECK_NOTHROW(read_study(folder / "full.toml"));
    for (const StudyKey& key : study_keys()) {
        INFO(study_section_words(key.section) << ": " << key.key);
        // As a key, or in the head of a table.
        const std::regex written("(^|[\n{,\\[. ])" + std::string(key.key) + "( =|\\]|\\.)");
        CHECK(std::regex_search(full, written));
    }
}

TEST_CASE("a study cut off anywhere, or without any one line, is read or complained of", "[input]")
{
    const std::string full = read(GLIM_SOURCE_DIR "/tests/input/full_study.toml");
    const TemporaryFolder folder;
    write(folder / "corner.obj", corner_obj);
    write(folder / "base.toml", base_of_full_study);
    write(folder / "lamp.ies", lamp_ies);
    write(folder / "bright.csv", "1 0.5\n0.5 0\n");
    std::size_t good = 0, bad = 0;
    const auto try_reading = [&](const std::string& text) {
        write(folder / "part.toml", text);
        try {
            read_study(folder / "part.toml");
            ++good;
        } catch (const InputError&) {
            ++bad;
        }
    };
    for (std::size_t length = 0; length < full.size(); ++length)
        try_reading(full.substr(0, length));
    CHECK(bad > full.size() / 2);
    good = 0;
    for (std::size_t at = 0; at < full.size(); at = full.find('\n', at) + 1)
        try_reading(full.substr(0, at) + full.substr(full.find('\n', at) + 1));
    CHECK(good > 5);
}
