#include "drawing/node_cells.h"

#include "specimens/made_fields.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

namespace {

FigureOnGrid grid_of_h(const Field& field)
{
    return {field, 5, [](double h, double) { return h; }};
}

std::vector<bool> where(const FigureOnGrid& f, double above)
{
    std::vector<bool> chosen;
    for (const double h : f.figures())
        chosen.push_back(h > above);
    return chosen;
}

} // namespace

TEST_CASE("nodes are outlined halfway to their neighbours and up to the field's edge", "[drawing]")
{
    const FigureOnGrid f = grid_of_h({{rectangle(0, 20, 0, 10)}});
    const auto lines = outline_of_nodes(f.grid(), where(f, 9));
    REQUIRE(lines.size() == 1);
    CHECK(lines[0].points.size() == 4);
    CHECK(area_of(lines) == (20 - 7.5) * 10);
    CHECK(outline_of_nodes(f.grid(), where(f, 100)).empty());
}

TEST_CASE("nodes inside others leave a hole", "[drawing]")
{
    const FigureOnGrid f({{rectangle(0, 20, 0, 20)}}, 5,
                         [](double h, double v) { return h == 10 && v == 10 ? 0 : 1; });
    const auto lines = outline_of_nodes(f.grid(), where(f, 0.5));
    CHECK(lines.size() == 2);
    CHECK(area_of(lines) == 400 - 25);
}

TEST_CASE("a patch has its middle far from its rim, and patches apart are two", "[drawing]")
{
    const FigureOnGrid f = grid_of_h({{rectangle(0, 40, 0, 20)}});
    std::vector<std::optional<std::size_t>> kinds;
    for (const double h : f.figures())
        kinds.push_back(h == 25 ? std::nullopt : std::optional<std::size_t>(7));
    const std::vector<NodePatch> patches = patches_of(f.grid(), kinds);
    REQUIRE(patches.size() == 2);
    // Columns 0 to 20, rows 0 to 20: five by five nodes, the third layer is the middle one.
    CHECK(patches[0].middle == Bearing{degrees(10), degrees(10)});
    CHECK(patches[0].depth == 3);
    CHECK(patches[0].kind == 7);
    CHECK(patches[1].middle.v == degrees(10));
    CHECK(patches[1].depth == 2);
}
