#include "drawing/eye_drawing.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

/// Points: an eye's view is 400 by 250.
constexpr double drawing_height = 250;

const ViewedAreas partly_hidden{.bare = square_millimetres(3000),
                                .visible = square_millimetres(1000),
                                .hidden = square_millimetres(1250),
                                .own = square_millimetres(750)};

} // namespace

TEST_CASE("all three rows of an eye's legend are on the drawing however long the names",
          "[drawing]")
{
    const std::string long_name(120, 'W');
    const auto entries = eye_legend(partly_hidden, {long_name, long_name, long_name, "nose"});
    REQUIRE(entries.size() == 3);
    const double height = legend_height(eye_legend_room.width, entries);
    const double one_row = legend_height(eye_legend_room.width, {entries.front()});
    CHECK(height > 3 * one_row);
    CHECK(height <= eye_legend_room.height);
    CHECK(eye_legend_room.bottom() <= drawing_height);
}

TEST_CASE("a legend sets its figures in print and leaves names as they are", "[drawing]")
{
    const auto entries = eye_legend(partly_hidden, {"lens 5 deg", "2 mm2"});
    CHECK(entries[0].words == "1000 mm\u00b2 in view of 3000 mm\u00b2");
    CHECK(entries[1].words == "1250 mm\u00b2 hidden by lens 5 deg and 2 mm2");
    CHECK(entries[2].words == "750 mm\u00b2 by the lamp or approved parts");
}

TEST_CASE("an eye's legend tells nothing that rounds to nothing", "[drawing]")
{
    ViewedAreas areas = partly_hidden;
    areas.hidden = areas.own = square_millimetres(0.0004);
    CHECK(eye_legend(areas, {}).size() == 1);
}
