#include "drawing/paint_picture.h"

#include "machine/stop.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;

namespace {

constexpr std::size_t columns = 80, rows = 40;

BodyPicture picture_by(const std::function<BodySample(std::size_t x, std::size_t y)>& sample)
{
    BodyPicture picture{picture_frame(Direction::x(), Direction::z(), Direction::x()), {}};
    picture.frame.width = columns / samples_a_side;
    picture.frame.height = rows / samples_a_side;
    for (std::size_t y = 0; y < rows; ++y)
        for (std::size_t x = 0; x < columns; ++x)
            picture.samples.push_back(sample(x, y));
    return picture;
}

BodySample facing(std::uint32_t part, float depth)
{
    return {part, 0, depth, 1, Eigen::Vector3f::UnitZ()};
}

std::size_t count_of(const std::vector<Rim>& rims, Rim rim)
{
    return static_cast<std::size_t>(std::count(rims.begin(), rims.end(), rim));
}

} // namespace

TEST_CASE("a line runs where parts meet, a strong one where a marked part ends before another",
          "[report]")
{
    const auto stepped = picture_by([](std::size_t x, std::size_t) {
        return x < 20 ? facing(0, 0) : x < 50 ? facing(1, 0) : facing(2, 30);
    });
    const std::vector<Rim> rims = rims_of(stepped, {false, true, true}, {});
    CHECK(rims[5 * columns + 10] == Rim::none);
    CHECK(rims[5 * columns + 19] == Rim::thin); // level with each other: no silhouette
    CHECK(rims[5 * columns + 20] == Rim::thin);
    CHECK(rims[5 * columns + 50] == Rim::strong);
    CHECK(count_of(rims, Rim::strong) == 4 * rows);
    CHECK(count_of(rims, Rim::thin) == 2 * rows);
    // Of part 2, which is nearer, it depends whether the line is strong.
    CHECK(count_of(rims_of(stepped, {false, true, false}, {}), Rim::strong) == 0);
}

TEST_CASE("a slanted surface has no lines, one that jumps has", "[drawing]")
{
    const Eigen::Vector3f slant = Eigen::Vector3f(-0.9F, 0, 0.436F).normalized();
    const auto slope = [&](float jump) {
        return picture_by([&](std::size_t x, std::size_t) {
            BodySample s = facing(0, 0);
            s.slant = slant;
            // Half a millimetre a sample to the right.
            s.depth = 0.5F * static_cast<float>(x) * 0.9F / 0.436F + (x < 40 ? 0 : jump);
            return s;
        });
    };
    CHECK(count_of(rims_of(slope(0), {false}, {}), Rim::none) == columns * rows);
    CHECK(count_of(rims_of(slope(20), {false}, {}), Rim::thin) == 2 * rows);
}

TEST_CASE("a pixel is the mean of its samples, under its line", "[drawing]")
{
    const auto blank = picture_by([](std::size_t, std::size_t) { return BodySample{}; });
    std::vector<Rim> rims(columns * rows);
    rims[columns * 2 + 4] = Rim::strong;
    const Raster raster = painted(blank.frame,
                                  [](std::size_t at) {
                                      return at % columns < 3 ? Colour{200, 100, 0} : white;
                                  },
                                  rims, {});
    CHECK(raster.width == 40);
    CHECK(raster.height == 20);
    CHECK(raster.at(0, 0) == Colour{200, 100, 0});
    CHECK(raster.at(1, 0) == Colour{228, 178, 128}); // half of each
    CHECK(raster.at(5, 0) == white);
    CHECK(raster.at(2, 1).red < 210);
    CHECK(raster.at(2, 1).red > 190);
}

TEST_CASE("hatches rise and fall, and fill a quarter", "[drawing]")
{
    const auto blank = picture_by([](std::size_t, std::size_t) { return BodySample{}; });
    std::size_t rising = 0, falling = 0;
    for (std::size_t at = 0; at < columns * rows; ++at) {
        rising += is_hatched(blank.frame, at) ? 1 : 0;
        falling += is_hatched(blank.frame, at, true) ? 1 : 0;
    }
    CHECK(rising == columns * rows / 4);
    CHECK(falling == columns * rows / 4);
    // One sample down: a rising line moves left, a falling one right.
    for (std::size_t at = columns + 1; at < 2 * columns - 1; ++at) {
        CHECK(is_hatched(blank.frame, at + columns - 1) == is_hatched(blank.frame, at));
        CHECK(is_hatched(blank.frame, at + columns + 1, true) == is_hatched(blank.frame, at, true));
    }
}

TEST_CASE("painting can be stopped", "[drawing]")
{
    const auto blank = picture_by([](std::size_t, std::size_t) { return BodySample{}; });
    std::stop_source stop;
    stop.request_stop();
    const Workers stopped{.threads = 1, .stop = stop.get_token(), .progress = {}};
    CHECK_THROWS_AS(rims_of(blank, {}, stopped), Stopped);
    CHECK_THROWS_AS(painted(
                        blank.frame, [](std::size_t) { return white; },
                        std::vector<Rim>(columns * rows), stopped),
                    Stopped);
}
