#include "report/starter_study.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("a starter study has a surface for each named part, each with its own name", "[report]")
{
    MeshFile mesh;
    mesh.mesh.points = {{0, 0, 0}, {1800, 0, 0}, {0, 900, 0}};
    mesh.mesh.facets = {{0, 1, 2}, {0, 1, 2}, {0, 1, 2}};
    mesh.parts = {{"nose", "body", "paint"}, {"nose", "", "chrome"}, {"", "", ""}};
    mesh.part_of_facet = {0, 1, 2};
    const std::string study = starter_study(mesh, "parts/corner.obj");
    CHECK(study.find("file = \"parts/corner.obj\"\n") != std::string::npos);
    CHECK(study.find("name = \"nose\"\nmesh = \"corner\"\nselect = { object = \"nose\", group = "
                     "\"body\", material = \"paint\" }\n") != std::string::npos);
    CHECK(study.find("name = \"nose 2\"\nmesh = \"corner\"\nselect = { object = \"nose\", material "
                     "= \"chrome\" }\n") != std::string::npos);
    CHECK(study.find("likely mm (1800 x 900 x 0 mm)") != std::string::npos);
    CHECK(study.find("nose 3") == std::string::npos);
}
