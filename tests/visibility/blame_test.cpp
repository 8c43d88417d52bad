#include "visibility/blame.h"
#include "visibility/sweep.h"

#include "shapes/rough_scene.h"
#include "shapes/small_study.h"

#include <catch2/catch.hpp>

#include <map>

using namespace glim;
using namespace glim::shapes;

namespace {

using Key = std::pair<std::uint32_t, std::uint32_t>; ///< part and facet

/// What each facet takes, and with `first_only` only where it stands first.
std::map<Key, double> by_facet(const std::vector<BlamedFacet>& blamed, bool first_only)
{
    std::map<Key, double> taken;
    for (const BlamedFacet& f : blamed)
        if (f.first || !first_only)
            taken[{f.part, f.facet}] += in_mm2(f.area);
    return taken;
}

double sum_of(const std::map<Key, double>& taken)
{
    double sum = 0;
    for (const auto& [key, area] : taken)
        sum += area;
    return sum;
}

/// A cell of 1 mm along a rim of 40 mm, as corners stand for whole cells there.
constexpr double rim_mm2 = 40;

// The lens is part 0; walls are two facets each, cut along a diagonal.
const TriangleMesh lens = plate(Point::Zero(), 60, 40);

} // namespace

TEST_CASE("every part on a ray is named, alone or jointly", "[visibility]")
{
    // Left half behind one wall, a strip of it behind a second one too.
    const Watched lamp(
        lamp_behind(lens, {wall(10, 0, 100, -100, 100), wall(20, 20, 100, -100, 100)}));
    const Blame blame = blame_toward(lamp.view(), Direction::x());
    REQUIRE(blame.parts.size() == 3);
    CHECK(in_mm2(blame.parts[0].sum()) == 0);
    CHECK(in_mm2(blame.parts[1].alone) == Approx(800).margin(rim_mm2));
    CHECK(in_mm2(blame.parts[1].jointly) == Approx(400).margin(rim_mm2));
    CHECK(in_mm2(blame.parts[2].alone) == Approx(0).margin(1e-9));
    CHECK(in_mm2(blame.parts[2].jointly) == Approx(400).margin(rim_mm2));
}

TEST_CASE("the wall nearer to the lamp is first, the one behind takes jointly", "[visibility]")
{
    const Watched lamp(
        lamp_behind(lens, {wall(20, 0, 100, -100, 100), wall(10, 0, 100, -100, 100)}));
    const Blame blame = blame_toward(lamp.view(), Direction::x());
    CHECK(in_mm2(blame.parts[1].jointly) == Approx(1200).margin(1));
    CHECK(in_mm2(blame.parts[2].jointly) == Approx(1200).margin(1));
    for (const BlamedFacet& f : blame.facets)
        CHECK(f.first == (f.part == 2));
}

TEST_CASE("a part's facets take together what it takes, first ones what is hidden", "[visibility]")
{
    const Watched lamp(lamp_behind(wrapped_lens(), clutter(5, 600)));
    for (const double h : {-45.0, -20.0, 33.0}) {
        CAPTURE(h);
        const Blame blame = blame_toward(lamp.view(), lamp.toward(h, 5));
        const auto taken = by_facet(blame.facets, false);
        for (std::uint32_t part = 0; part < blame.parts.size(); ++part) {
            double sum = 0;
            for (const auto& [key, area] : taken)
                sum += key.first == part ? area : 0;
            CHECK(sum == Approx(in_mm2(blame.parts[part].sum())).margin(1e-9));
        }
        const SeenArea seen = seen_toward(lamp.view(), lamp.toward(h, 5));
        REQUIRE(in_mm2(seen.lens - seen.visible) > 1);
        CHECK(sum_of(by_facet(blame.facets, true)) ==
              Approx(in_mm2(seen.lens - seen.visible)).epsilon(1e-6));
    }
}

TEST_CASE("asked for the first facet only, the same ones are named with the same area",
          "[visibility]")
{
    // Clutter before a stack of eight walls: more on a ray than is asked for at once.
    std::vector<TriangleMesh> bodies = clutter(11, 600);
    for (int i = 0; i < 8; ++i)
        bodies.push_back(wall(500 - 10 * i, -800, 800, 0, 300));
    const Watched lamp(lamp_behind(wrapped_lens(), bodies));
    for (const double h : {-45.0, -20.0, 33.0}) {
        const auto all = by_facet(blame_toward(lamp.view(), lamp.toward(h, 5)).facets, true);
        const auto first = by_facet(first_blamed_toward(lamp.view(), lamp.toward(h, 5)), true);
        REQUIRE(all.size() > 10);
        REQUIRE(first.size() == all.size());
        for (const auto& [key, area] : all)
            CHECK(first.at(key) == Approx(area).epsilon(1e-9));
    }
}

TEST_CASE("of a repeated facet the lowest copy is blamed", "[visibility]")
{
    // Facets 0 and 1 are one wall, 2 and 3 the same once more, and so is another surface.
    const TriangleMesh one = wall(10, 0, 100, -100, 100);
    const TriangleMesh turned_copy = moved(turned_over(one), {0.04, 0, 0});
    const Watched lamp(lamp_behind(lens, {joined(one, one), turned_copy, one}));
    const Blame blame = blame_toward(lamp.view(), Direction::x());
    for (const BlamedFacet& f : blame.facets) {
        CHECK(f.facet < 2);
        CHECK(f.first == (f.part == 1));
    }
    CHECK(in_mm2(blame.parts[1].jointly) == Approx(1200).margin(1));
    for (const BlamedFacet& f : first_blamed_toward(lamp.view(), Direction::x())) {
        CHECK(f.part == 1);
        CHECK(f.facet < 2);
    }
}

TEST_CASE("a copy that lies nearer than the tie does not take the blame from the lowest",
          "[visibility]")
{
    const TriangleMesh low = wall(10.04, 0, 100, -100, 100);
    const Watched lamp(lamp_behind(lens, {low, wall(10, 0, 100, -100, 100)}));
    for (const BlamedFacet& f : first_blamed_toward(lamp.view(), Direction::x()))
        CHECK(f.part == 1);
    const Watched beyond(
        lamp_behind(lens, {wall(10.06, 0, 100, -100, 100), wall(10, 0, 100, -100, 100)}));
    for (const BlamedFacet& f : first_blamed_toward(beyond.view(), Direction::x()))
        CHECK(f.part == 2);
}

TEST_CASE("a wall of four strips takes from a lens by the strips' widths", "[visibility]")
{
    // Strips 5, 10, 15 and 30 mm wide, before a lens of 60 x 40 mm: 200, 400, 600, 1200 mm2.
    TriangleMesh strips;
    for (const auto& [from, to] : {std::pair{-30.0, -25.0}, {-25, -15}, {-15, 0}, {0, 30}})
        strips = joined(strips, wall(10, from, to, -100, 100));
    const Watched lamp(lamp_behind(lens, {strips}));
    const auto taken = by_facet(blame_toward(lamp.view(), Direction::x()).facets, true);
    std::array<double, 4> of_strip{};
    for (const auto& [key, area] : taken) {
        CHECK(key.first == 1);
        of_strip.at(key.second / 2) += area;
    }
    for (std::size_t i = 0; i < 4; ++i)
        CHECK(of_strip[i] == Approx(std::array{200.0, 400.0, 600.0, 1200.0}[i]).margin(rim_mm2));
    CHECK(sum_of(taken) == Approx(2400).margin(1e-6));
}

TEST_CASE("nothing in the way is nobody's blame", "[visibility]")
{
    const Watched lamp(lamp_behind(lens, {wall(10, 100, 200, -100, 100)}));
    const Blame blame = blame_toward(lamp.view(), Direction::x());
    CHECK(blame.facets.empty());
    CHECK(in_mm2(blame.parts[1].sum()) == 0);
    CHECK(first_blamed_toward(lamp.view(), Direction::x()).empty());
    // Seen from behind the lens has no area to hide.
    CHECK(blame_toward(lamp.view(), -Direction::x()).facets.empty());
}
