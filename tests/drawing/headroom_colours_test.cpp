#include "drawing/headroom_colours.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("bands of headroom begin where the one before ends", "[drawing]")
{
    CHECK(headroom_band(millimetres(-0.001)).words == "inside");
    CHECK(headroom_band(millimetres(0)).words == "0 to 1");
    CHECK(headroom_band(millimetres(1)).words == "1 to 2");
    CHECK(headroom_band(millimetres(19.9)).words == "10 to 20 mm");
    CHECK(headroom_band(millimetres(20)).words == "more");
    CHECK(headroom_band(millimetres(1e9)).words == "more");
}

// Weights of the channels in brightness as Rec. ITU-R BT.709 has them, without its gamma.
TEST_CASE("what has more headroom is lighter", "[drawing]")
{
    double before = 0;
    for (const HeadroomBand& band : headroom_bands()) {
        if (band.words == "inside")
            continue;
        const double light =
            0.2126 * band.colour.red + 0.7152 * band.colour.green + 0.0722 * band.colour.blue;
        CHECK((light > before || band.words == "more"));
        before = light;
    }
}
