#include "drawing/paint_picture.h"

#include "drawing/picture_colours.h"
#include "machine/stop.h"

#include <array>
#include <cmath>

namespace glim {

namespace {

constexpr double thin_darkness = 0.5, strong_darkness = 0.92;

Colour with_rim(Colour colour, Rim rim)
{
    switch (rim) {
    case Rim::none:
        return colour;
    case Rim::thin:
        return mixed(colour, rim_colour, thin_darkness);
    case Rim::strong:
        break;
    }
    return mixed(colour, rim_colour, strong_darkness);
}

std::size_t columns_of(const PictureFrame& frame)
{
    return std::size_t{frame.width} * samples_a_side;
}

} // namespace

Colour in_light(Colour colour, float light)
{
    const auto lit = [&](std::uint8_t channel) {
        return static_cast<std::uint8_t>(std::lround(static_cast<float>(channel) * light));
    };
    return {lit(colour.red), lit(colour.green), lit(colour.blue)};
}

bool is_hatched(const PictureFrame& frame, std::size_t at, bool falling)
{
    constexpr std::size_t spacing = 16, width = 4; // samples, along a row
    const std::size_t column = at % columns_of(frame), row = at / columns_of(frame);
    const std::size_t along =
        falling ? column + spacing * frame.height * samples_a_side - row : column + row;
    return along % spacing < width;
}

Raster painted(const PictureFrame& frame, const SampleColour& colour, const std::vector<Rim>& rims,
               const Workers& workers)
{
    Raster raster(static_cast<int>(frame.width), static_cast<int>(frame.height));
    const auto pixel = [&](std::size_t x, std::size_t y) {
        std::array<unsigned, 3> sum{};
        for (std::size_t i = 0; i < samples_a_side; ++i)
            for (std::size_t j = 0; j < samples_a_side; ++j) {
                const std::size_t at =
                    (y * samples_a_side + j) * columns_of(frame) + x * samples_a_side + i;
                const Colour c = with_rim(colour(at), rims[at]);
                sum[0] += c.red;
                sum[1] += c.green;
                sum[2] += c.blue;
            }
        constexpr unsigned count = samples_a_side * samples_a_side;
        const auto mean = [&](unsigned s) {
            return static_cast<std::uint8_t>((s + count / 2) / count);
        };
        return Colour{mean(sum[0]), mean(sum[1]), mean(sum[2])};
    };
    const bool whole = for_each_index(frame.height, workers.silent(), [&](std::size_t y, unsigned) {
        for (std::size_t x = 0; x < frame.width; ++x)
            raster.at(static_cast<int>(x), static_cast<int>(y)) = pixel(x, y);
    });
    if (!whole)
        throw Stopped();
    return raster;
}

} // namespace glim
