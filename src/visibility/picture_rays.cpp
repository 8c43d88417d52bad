#include "visibility/picture_rays.h"

#include "machine/stop.h"

#include <algorithm>

namespace glim {

PictureRays::PictureRays(const PictureFrame& frame, const Point& origin, Length before)
    : frame_(frame), before_(before), right_(frame.across * in_mm(frame.pixel)),
      down_(-frame.up * in_mm(frame.pixel))
{
    corner_ = frame.centre - origin + in_mm(before) * frame.toward.vector() -
              frame.width / 2.0 * right_ - frame.height / 2.0 * down_;
}

// The four samples of a pixel stand on a square that is turned, so that an upright or level edge
// passes them one by one: a quarter of a pixel counts.
Point PictureRays::at(const SamplePlace& s, float distance) const
{
    static_assert(samples_a_side == 2);
    const std::uint32_t i = s.column % 2, j = s.row % 2;
    const std::uint32_t column = s.column / 2, row = s.row / 2;
    const double x = column + (1 + 4 * i + 2 * j) / 8.0;
    const double y = row + (3 - 2 * i + 4 * j) / 8.0;
    return corner_ + x * right_ + y * down_ - double{distance} * frame_.toward.vector();
}

RayStart PictureRays::start(const SamplePlace& s) const
{
    const Point p = at(s, 0);
    return {static_cast<float>(p.x()), static_cast<float>(p.y()), static_cast<float>(p.z()), 0};
}

std::vector<SamplePlace> samples_of_band(const PictureFrame& frame, std::size_t band)
{
    constexpr std::uint32_t block = 4; // 4 by 4 samples are one packet of rays
    const auto first = static_cast<std::uint32_t>(band * rows_of_band * samples_a_side);
    const std::uint32_t rows =
        std::min(frame.height * samples_a_side, first + rows_of_band * samples_a_side);
    const std::uint32_t columns = frame.width * samples_a_side;
    std::vector<SamplePlace> samples;
    samples.reserve(std::size_t{rows - first} * columns);
    for (std::uint32_t top = first; top < rows; top += block)
        for (std::uint32_t left = 0; left < columns; left += block)
            for (std::uint32_t row = top; row < std::min(rows, top + block); ++row)
                for (std::uint32_t column = left; column < std::min(columns, left + block);
                     ++column)
                    samples.push_back({column, row});
    return samples;
}

void for_each_band(const PictureFrame& frame, const Workers& workers,
                   const std::function<void(std::size_t band)>& work)
{
    const std::size_t bands = (frame.height + rows_of_band - 1) / rows_of_band;
    if (!for_each_index(bands, workers.silent(), [&](std::size_t band, unsigned) { work(band); }))
        throw Stopped();
}

} // namespace glim
