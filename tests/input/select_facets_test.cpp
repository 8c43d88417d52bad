#include "input/select_facets.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

/// Four facets: two side by side that share an edge, at y = -100 to 0, one that looks the other way
/// at y = 50 to 150, and one far off at y = -900.
NamedMesh four_facets()
{
    NamedMesh mesh;
    mesh.mesh.points = {{0, -100, 0}, {0, 0, 0},   {0, 0, 60},   {0, -100, 60}, {0, 50, 0},
                        {0, 150, 0},  {0, 50, 60}, {0, -900, 0}, {0, -860, 0},  {0, -900, 60}};
    mesh.mesh.facets = {{0, 2, 1}, {0, 3, 2}, {4, 5, 6}, {7, 9, 8}};
    mesh.parts = {{"lens", "lamp front", "amber-1"}, {"body", "shell", "paint"}, {"", "", ""}};
    mesh.part_of_facet = {0, 0, 1, 2};
    return mesh;
}

using Places = std::vector<std::uint32_t>;

Places chosen(const Selection& selection)
{
    return selected_facets(four_facets(), selection, Vehicle{});
}

} // namespace

TEST_CASE("a selection without keys takes the whole mesh", "[input]")
{
    CHECK(chosen({}) == Places{0, 1, 2, 3});
}

TEST_CASE("facets are selected by object, group and material", "[input]")
{
    CHECK(chosen({.objects = {{"lens", {}}}}) == Places{0, 1});
    CHECK(chosen({.objects = {{"b*", {}}, {"l?ns", {}}}}) == Places{0, 1, 2});
    CHECK(chosen({.materials = {{"amber*", {}}}}) == Places{0, 1});
    CHECK(chosen({.objects = {{"lens", {}}}, .materials = {{"paint", {}}}}).empty());
}

TEST_CASE("a group's pattern fits its whole name or one of its words", "[input]")
{
    CHECK(chosen({.groups = {{"lamp front", {}}}}) == Places{0, 1});
    CHECK(chosen({.groups = {{"front", {}}}}) == Places{0, 1});
    CHECK(chosen({.groups = {{"fro", {}}}}).empty());
}

// The usual frame has its left at negative y.
TEST_CASE("facets are selected by the side of their centroid", "[input]")
{
    CHECK(chosen({.side = Side::left}) == Places{0, 1, 3});
    CHECK(chosen({.side = Side::right}) == Places{2});
}

TEST_CASE("a box selects by centroid, and its faces belong to it", "[input]")
{
    // The centroid of facet 2 is (0, 83.333, 20), that of facet 0 (0, -33.333, 20).
    CHECK(chosen({.box = Box{{0, -40, 0}, {0, 90, 20}}}) == Places{0, 2});
    CHECK(chosen({.box = Box{{0, -40, 0}, {0, 90, 19}}}).empty());
}

TEST_CASE("facing selects the facets whose outside looks that way", "[input]")
{
    CHECK(chosen({.facing = Vector(-1, 0, 0)}) == Places{0, 1, 3});
    CHECK(chosen({.facing = Vector(1, 1, 0)}) == Places{2});
}

TEST_CASE("component_at takes the connected part nearest to the point", "[input]")
{
    CHECK(chosen({.component_at = Point(5, -90, 50)}) == Places{0, 1});
    CHECK(chosen({.component_at = Point(0, 0, 3000)}) == Places{0, 1});
    CHECK(chosen({.component_at = Point(0, -850, 0)}) == Places{3});
    // Of what the other keys leave, and no more.
    CHECK(chosen({.objects = {{"body", {}}}, .component_at = Point(0, -850, 0)}) == Places{2});
}

TEST_CASE("patterns that fit nothing are told with the names there are", "[input]")
{
    Complaints complaints;
    Selection selection;
    selection.objects = {{"lens", {}}, {"lans", {"a.toml", 3, 7, {}}}};
    CHECK(complain_of_idle_patterns(four_facets(), selection, complaints) == 1);
    try {
        complaints.throw_if_any();
        FAIL("there must be a complaint");
    } catch (const InputError& error) {
        CHECK(error.complaints()[0].place.line == 3);
        CHECK(error.complaints()[0].remedy == "did you mean `lens`?");
    }
}
