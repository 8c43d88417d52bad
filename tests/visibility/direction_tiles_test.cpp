#include "visibility/direction_tiles.h"

#include "geometry/bearing.h"
#include "shapes/rough_scene.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

TEST_CASE("every direction lies in the cone of its tile", "[visibility]")
{
    Sequence s(0.1);
    std::vector<Direction> directions = {Direction::x(),  -Direction::x(), Direction::y(),
                                         -Direction::y(), Direction::z(),  -Direction::z()};
    for (int h = -180; h <= 180; h += 10)
        for (int v = -90; v <= 90; v += 10)
            directions.push_back(direction_of({degrees(h), degrees(v)}, LampFrame{}));
    for (int i = 0; i < 2000; ++i)
        directions.push_back(direction_of(
            {degrees(s.next(-180, 180)), degrees(std::fmod(s.next(0, 180) * 7, 180) - 90)},
            LampFrame{}));
    const DirectionTiles tiles(directions);
    for (const Direction& d : directions) {
        const auto place = tiles.place_of(d);
        REQUIRE(place.has_value());
        const DirectionCone& cone = tiles.cones()[*place];
        CHECK(cone.axis.dot(d) >= cone.cosine);
        CHECK(cone.sine * cone.sine + cone.cosine * cone.cosine == Approx(1));
        CHECK(cone.sine < sin(degrees(7.2))); // half a diagonal of 10 by 10 degrees
    }
}

TEST_CASE("a tile is held where a direction lies in it, and nowhere else", "[visibility]")
{
    const auto at = [](double h, double v) {
        return direction_of({degrees(h), degrees(v)}, LampFrame{});
    };
    const std::array directions = {at(3, 3), at(4, 7), at(23, 3)};
    const DirectionTiles tiles(directions);
    CHECK(tiles.cones().size() == 2);
    CHECK(tiles.place_of(at(9, 9)) == tiles.place_of(directions[0]));
    CHECK(tiles.place_of(at(21, 1)) == tiles.place_of(directions[2]));
    CHECK_FALSE(tiles.place_of(at(13, 3)).has_value());
    CHECK_FALSE(tiles.place_of(at(3, -3)).has_value());
}
