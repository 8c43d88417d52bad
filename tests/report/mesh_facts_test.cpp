#include "report/mesh_facts.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

/// Two triangles, 1800 long and 600 wide, in two parts.
MeshFile two_triangles()
{
    MeshFile file;
    file.format = "OBJ";
    file.mesh.points = {{0, 0, 0}, {1800, 0, 0}, {1800, 600, 0}, {0, 600, 0}};
    file.mesh.facets = {{0, 1, 2}, {0, 2, 3}};
    file.parts = {{"nose", "", "paint"}, {"", "body", ""}};
    file.part_of_facet = {0, 1};
    file.points_in_file = 5;
    file.polygons_in_file = 2;
    file.decimals = 4;
    return file;
}

} // namespace

TEST_CASE("inspect tells size, likely unit, health and parts", "[report]")
{
    CHECK(mesh_words(mesh_facts(two_triangles(), "nose.obj")) == R"(nose.obj
  format         OBJ
  in the file    5 points, 2 polygons; coordinates of up to 4 significant digits
  box            [0, 0, 0] to [1800, 600, 0] in the file's own unit
  unit           likely mm (1800 x 600 x 0 mm); a study has to say it
  chord error    about 0, estimated from how facets bend
  facets         2
  points         4 after welding equal ones
  components     1, connected over shared corners
  degenerate     0 facets without area
  duplicate      0 facets beyond the first on the same corners
  open edges     4 used by one facet
  crowded edges  0 used by three facets or more
  winding        0 edges whose two facets face opposite ways

Parts, in the order of the file
  object  group  material  facets  box
  nose    -      paint          1  [0, 0, 0] to [1800, 600, 0]
  -       body   -              1  [0, 0, 0] to [1800, 600, 0]
)");
}

TEST_CASE("what of a mesh was not read is said", "[report]")
{
    MeshFile file = two_triangles();
    file.curved_surfaces = 3;
    file.crossed_polygons = 1;
    const std::string text = mesh_words(mesh_facts(file, "nose.obj"));
    CHECK(text.find("not read       3 free-form surfaces") != std::string::npos);
    CHECK(text.find("crossed        polygons that cross themselves: 1;") != std::string::npos);
}

TEST_CASE("inspect's JSON has the same facts", "[report]")
{
    const std::string json = text_of(mesh_json(mesh_facts(two_triangles(), "nose.obj")));
    CHECK(json.find(R"("likely_units": ["mm"])") != std::string::npos);
    CHECK(json.find(R"("boundary_edges": 4)") != std::string::npos);
    CHECK(json.find(R"("most": [1800.0, 600.0, 0.0])") != std::string::npos);
}
