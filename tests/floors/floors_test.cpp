#include "floors/floors.h"

#include "machine/temporary_folder.h"

#include <catch2/catch.hpp>

using namespace glim::test;
using Findings = std::vector<std::string>;

namespace {

/// A tree of sources for a while, each file with the one line given.
class Tree {
public:
    Tree(std::initializer_list<std::pair<const char*, const char*>> files)
    {
        for (const auto& [path, text] : files)
            write(folder_ / path, std::string("#pragma once\n") + text + "\n");
    }
    Findings broken() const { return broken_floors(folder_.path()); }

private:
    TemporaryFolder folder_;
};

} // namespace

TEST_CASE("the sources of this program keep to their floors", "[floors]")
{
    CHECK(broken_floors(std::string(GLIM_SOURCE_DIR) + "/src") == Findings{});
}

TEST_CASE("a tree that keeps to its floors passes", "[floors]")
{
    const Tree tree{
        {"units/units.h", "#include <string>"},
        {"machine/stop.cpp", "#include <signal.h>"},
        {"geometry/vector.h", "#include <Eigen/Core>"},
        {"geometry/polygons.cpp", "#include <polyclipping/clipper.hpp>"},
        {"input/toml_table.cpp", "  #  include <toml++/toml.h> // the one door"},
        {"input/read_study.h", "#include \"geometry/vector.h\""},
        {"visibility/ray_caster.cpp", "#include <embree3/rtcore.h>"},
        {"app/commands.cpp", "#include \"input/read_study.h\""},
        {"app/words.h", "// #include \"app/words.h\" would be a circle"},
    };
    CHECK(tree.broken() == Findings{});
}

TEST_CASE("an arrow upward is found, with its line", "[floors]")
{
    const Tree tree{{"geometry/vector.h", "#include \"report/charts.h\""}};
    CHECK(tree.broken() ==
          Findings{"geometry/vector.h:2: report/charts.h goes up, from geometry to report"});
}

TEST_CASE("an arrow sideways is found", "[floors]")
{
    const Tree tree{{"visibility/sweep.cpp", "#include \"input/read_study.h\""},
                    {"units/trig.cpp", "#include \"machine/stop.h\""}};
    CHECK(
        tree.broken() ==
        Findings{
            "units/trig.cpp:2: machine/stop.h goes sideways, from units to machine",
            "visibility/sweep.cpp:2: input/read_study.h goes sideways, from visibility to input"});
}

TEST_CASE("input is known to app alone, though other rooms stand above it", "[floors]")
{
    const Tree tree{{"judgement/session.cpp", "#include \"input/read_study.h\""},
                    {"report/study.cpp", "#include \"input/read_study.h\""},
                    {"input/read_study.cpp", "#include \"input/read_study.h\""}};
    CHECK(tree.broken() ==
          Findings{
              "judgement/session.cpp:2: input/read_study.h reaches input, which only app may know",
              "report/study.cpp:2: input/read_study.h reaches input, which only app may know"});
}

TEST_CASE("a circle among files is found once, with its way", "[floors]")
{
    const Tree tree{{"model/a.h", "#include \"model/b.h\""},
                    {"model/b.h", "#include \"model/c.h\""},
                    {"model/c.h", "#include \"model/a.h\""},
                    {"model/d.h", "#include \"model/a.h\""},
                    {"model/e.h", "#include \"model/e.h\""}};
    CHECK(tree.broken() == Findings{"model/a.h: includes itself, by model/b.h, by model/c.h",
                                    "model/e.h: includes itself"});
}

TEST_CASE("a library beyond its doors is found, in a header even of the right name", "[floors]")
{
    const Tree tree{{"visibility/ray_caster.h", "#include <embree3/rtcore.h>"},
                    {"report/canvas_test_page.cpp", "#include <cairo/cairo.h>"},
                    {"units/units.h", "#include <Eigen/Core>"},
                    {"model/clock.cpp", "#include <sys/time.h>"}};
    CHECK(tree.broken() ==
          Findings{
              "model/clock.cpp:2: sys/time.h brings in POSIX and the processor beyond its doors",
              "report/canvas_test_page.cpp:2: cairo/cairo.h brings in Cairo and Pango beyond its "
              "doors",
              "units/units.h:2: Eigen/Core brings in Eigen beyond its doors",
              "visibility/ray_caster.h:2: embree3/rtcore.h brings in Embree beyond its doors"});
}

TEST_CASE("every door opens for its own files and for no others", "[floors]")
{
    const auto [header, file] = GENERATE(table<const char*, const char*>({
        {"embree3/rtcore.h", "visibility/ray_caster.cpp"},
        {"polyclipping/clipper.hpp", "geometry/polygons.cpp"},
        {"OpenMesh/Core/IO/MeshIO.hh", "input/read_mesh_openmesh.cpp"},
        {"opencascade/STEPControl_Reader.hxx", "input/read_mesh_step.cpp"},
        {"toml++/toml.h", "input/toml_table.cpp"},
        {"png.h", "input/grey_map.cpp"},
        {"nlohmann/json.hpp", "report/json.cpp"},
        {"pango/pangocairo.h", "drawing/canvas.cpp"},
        {"httplib.h", "desk/server.cpp"},
        {"CLI/CLI.hpp", "app/command_line.cpp"},
    }));
    const std::string line = "#include <" + std::string(header) + ">";
    CHECK(Tree{{file, line.c_str()}}.broken() == Findings{});
    CHECK(Tree{{"app/main.cpp", line.c_str()}}.broken().size() == 1);
}

TEST_CASE("a library without a door is found", "[floors]")
{
    const Tree tree{{"report/tables.cpp", "#include <boost/format.hpp>"}};
    CHECK(tree.broken() ==
          Findings{"report/tables.cpp:2: boost/format.hpp is of a library that has no door"});
}

TEST_CASE("a folder without a floor is found, and so is a source in no room", "[floors]")
{
    const Tree tree{{"helpers/strings.h", ""},
                    {"main.cpp", ""},
                    {"model/lamp.h", "#include \"helpers/strings.h\""}};
    CHECK(tree.broken() ==
          Findings{"helpers: is a folder without a floor", "main.cpp: is in no room",
                   "model/lamp.h:2: helpers/strings.h gives no path from src, or its room is not "
                   "in the plan"});
}

TEST_CASE("our own files are included by their path from src, in quotes", "[floors]")
{
    const Tree tree{{"model/lamp.h", "#include \"rule.h\""},
                    {"model/rule.h", "#include <model/surface.h>"},
                    {"model/study.h", "#include \"../geometry/vector.h\""},
                    {"model/vehicle.h", "#include MODEL_HEADER"}};
    CHECK(tree.broken() ==
          Findings{
              "model/lamp.h:2: rule.h gives no path from src, or its room is not in the plan",
              "model/rule.h:2: model/surface.h stands in angle brackets, which are for what is not "
              "ours",
              "model/study.h:2: ../geometry/vector.h gives no path from src, or its room is not in "
              "the plan",
              "model/vehicle.h:2: MODEL_HEADER cannot be followed: it has no brackets"});
}
