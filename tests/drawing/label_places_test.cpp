#include "drawing/label_places.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("labels keep inside the frame and off each other", "[drawing]")
{
    LabelPlaces places({0, 0, 100, 50});
    const Extent size{40, 10};
    const Point2 corner{0, 50};
    // Beside, above and below the corner: only to the right and above it there is room.
    const auto first = places.first_free(places_around(corner, size, 5), size);
    REQUIRE(first);
    CHECK(*first == Point2(5, 35));
    CHECK_FALSE(places.first_free(places_around(corner, size, 5), size));
    places.take({50, 0, 50, 50});
    const std::vector<Point2> in_the_way{{55, 5}};
    CHECK_FALSE(places.first_free(in_the_way, size));
    const std::vector<Point2> free{{55, 5}, {5, 5}};
    CHECK(*places.first_free(free, size) == Point2(5, 5));
}
