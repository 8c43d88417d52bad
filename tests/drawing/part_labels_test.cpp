#include "drawing/part_labels.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

/// 400 by 200 pixels: part 0 at the left, part 1 on a strip at the right, the rest empty.
BodyPicture two_parts(std::uint32_t strip)
{
    BodyPicture picture{picture_frame(Direction::x(), Direction::z(), Direction::x()), {}};
    picture.frame.width = 400;
    picture.frame.height = 200;
    picture.samples.resize(std::size_t{800} * 400);
    for (std::size_t at = 0; at < picture.samples.size(); ++at) {
        const std::size_t x = at % 800 / samples_a_side;
        if (x < 200)
            picture.samples[at].part = 0;
        else if (x >= 400 - strip)
            picture.samples[at].part = 1;
    }
    return picture;
}

} // namespace

TEST_CASE("a name stands in the middle of its part, and none where there is no room", "[drawing]")
{
    const BodyPicture picture = two_parts(20);
    const std::vector<bool> free(picture.samples.size(), true);
    const auto labels = place_labels(picture, free, {"nose", "a rather long name"}, 8, 2);
    REQUIRE(labels.size() == 1);
    CHECK(labels[0].part == 0);
    CHECK(labels[0].words == "nose");
    CHECK(labels[0].centre.x() == Approx(100).margin(6));
    CHECK(labels[0].centre.y() == Approx(100).margin(6));
    CHECK(place_labels(two_parts(180), free, {"", "wing"}, 8, 2).front().part == 1);
}

TEST_CASE("a name keeps off what is not free", "[drawing]")
{
    const BodyPicture picture = two_parts(20);
    std::vector<bool> free(picture.samples.size());
    for (std::size_t at = 0; at < free.size(); ++at)
        free[at] = at / 800 > 200; // the lower half
    const auto labels = place_labels(picture, free, {"nose", ""}, 8, 2);
    REQUIRE(labels.size() == 1);
    CHECK(labels[0].centre.y() > 100 + extent_of({.words = "nose", .size = 8}).height);
}
